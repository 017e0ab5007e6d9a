import { toleranceEntries } from '../toleranceEntry.js';

/** Gobies and dartfish: a mixed family, so each kind by itself. */
export const gobies = [
  ...toleranceEntries({ advice: 'caution', reason: 'goby', source: 'Memory' }, [
    'Gobies, goby / Gobiidae, Lythrypnus, Trimma, Eviota',
  ]),
  ...toleranceEntries({ advice: 'caution', reason: 'scaleless-goby', source: 'Memory' }, [
    'Clown gobies, clown goby, coral goby, yellow clown goby, green clown goby, citron goby / Gobiodon, Gobiodon okinawae, Gobiodon citrinus, Paragobiodon',
  ]),
  ...toleranceEntries({ advice: 'caution', reason: 'dartfish', source: 'Memory' }, [
    'Firefish, firefish goby, fire goby, magnificent firefish / Nemateleotris, Nemateleotris magnifica',
    'Purple firefish, decora firefish, helfrichi firefish / Nemateleotris decora, Nemateleotris helfrichi',
    'Dartfish, dart goby, scissortail goby, scissortail dartfish, zebra dartfish, gudgeon / Ptereleotris, Ptereleotris evides, Ptereleotris zebra, Microdesmidae',
  ]),
  ...toleranceEntries({ advice: 'usual care', reason: 'hardy-goby', source: 'Memory' }, [
    'Shrimp gobies, shrimp goby, watchman goby, yellow watchman goby, crab eye goby, crab eyed goby, yasha goby / Cryptocentrus, Cryptocentrus cinctus, Amblyeleotris, Stonogobiops, Signigobius biocellatus',
    'Sleeper gobies, sleeper goby, diamond goby, sand sifting goby, golden head sleeper goby / Valenciennea, Valenciennea puellaris, Valenciennea strigata, Amblygobius',
    'Neon gobies, neon goby, cleaner goby, sharknose goby / Elacatinus, Elacatinus oceanops, Gobiosoma',
  ]),
];

/** Wrasses, hogfish and parrotfish. */
export const wrasses = [
  ...toleranceEntries({ advice: 'caution', reason: 'wrasse', source: 'Memory' }, [
    'Wrasses, wrasse / Labridae, Cheilinus, Oxycheilinus, Stethojulis, Hemigymnus',
    'Six-line wrasse, sixline wrasse, six line, sixline, 6-line wrasse / Pseudocheilinus hexataenia, Pseudocheilinus',
    'Mystery wrasse, white barred wrasse / Pseudocheilinus ocellatus',
    'Possum wrasses, possum wrasse, pink streaked wrasse / Wetmorella, Pseudocheilinops ataenia',
    'Fairy wrasses, fairy wrasse, scotts fairy wrasse, rhomboid wrasse, naoko wrasse / Cirrhilabrus, Cirrhilabrus scottorum, Cirrhilabrus rubriventralis, Cirrhilabrus solorensis',
    'Flasher wrasses, flasher wrasse, carpenters flasher wrasse, mccoskers flasher wrasse / Paracheilinus, Paracheilinus carpenteri, Paracheilinus mccoskeri',
    'Parrotfish, parrot fish, bicolor parrotfish / Scaridae, Scarus, Cetoscarus, Chlorurus',
  ]),
  ...toleranceEntries({ advice: 'caution', reason: 'sand-sleeper', source: 'Memory' }, [
    'Halichoeres wrasses, melanurus wrasse, yellow wrasse, yellow coris wrasse, canary wrasse, radiant wrasse, christmas wrasse / Halichoeres, Halichoeres melanurus, Halichoeres chrysus, Halichoeres iridis, Halichoeres claudia',
    'Coris wrasses, red coris wrasse, formosa wrasse, gaimard wrasse / Coris, Coris gaimard, Coris formosa',
    'Rockmover wrasse, dragon wrasse / Novaculichthys taeniourus',
    'Razor wrasses, razor wrasse, razorfish / Xyrichtys, Iniistius, Cymolutes',
  ]),
  ...toleranceEntries({ advice: 'avoid', reason: 'delicate-wrasse', source: 'Memory' }, [
    'Leopard wrasses, leopard wrasse, black leopard wrasse, potters leopard wrasse, choati wrasse / Macropharyngodon, Macropharyngodon meleagris, Macropharyngodon bipartitus, Macropharyngodon geoffroy',
    'Tamarin wrasses, tamarin wrasse, anampses, yellowtail tamarin wrasse, psychedelic wrasse / Anampses, Anampses meleagrides, Anampses chrysocephalus',
  ]),
  ...toleranceEntries({ advice: 'avoid', reason: 'cleaner-wrasse', source: 'Memory' }, [
    'Cleaner wrasses, cleaner wrasse, bluestreak cleaner wrasse, hawaiian cleaner wrasse / Labroides, Labroides dimidiatus, Labroides phthirophagus',
  ]),
  ...toleranceEntries({ advice: 'usual care', reason: 'hardy-wrasse', source: 'Memory' }, [
    'Thalassoma wrasses, lunare wrasse, moon wrasse, lyretail wrasse, bluehead wrasse, klunzingers wrasse / Thalassoma, Thalassoma lunare, Thalassoma bifasciatum, Thalassoma lutescens',
    'Bird wrasses, bird wrasse, green bird wrasse / Gomphosus, Gomphosus varius, Gomphosus caeruleus',
    'Hogfish, cuban hogfish, spanish hogfish, candy hogfish, coral hogfish / Bodianus, Bodianus pulchellus, Bodianus rufus',
    'Harlequin tusk, harlequin tuskfish, tuskfish, harlequin tusk wrasse / Choerodon fasciatus, Choerodon',
  ]),
];

/** Anthias. */
export const anthias = [
  ...toleranceEntries({ advice: 'caution', reason: 'anthias', source: 'Memory' }, [
    'Anthias / Serranidae, Anthiinae, Anthiadinae, Pseudanthias, Mirolabrichthys, Plectranthias',
    'Lyretail anthias / Pseudanthias squamipinnis',
    "Bartlett's anthias, bartletts anthias / Pseudanthias bartlettorum",
    'Carberryi anthias, threadfin anthias / Nemanthias carberryi',
    'Dispar anthias / Pseudanthias dispar',
    'Bimaculatus anthias, twinspot anthias / Pseudanthias bimaculatus',
    'Squareback anthias, square anthias / Pseudanthias pleurotaenia',
    'Resplendent anthias / Pseudanthias pulcherrimus',
  ]),
  ...toleranceEntries({ advice: 'avoid', reason: 'deep-anthias', source: 'Memory' }, [
    'Ventralis anthias, longfin anthias / Pseudanthias ventralis',
    'Purple queen anthias, tuka anthias / Pseudanthias tuka, Pseudanthias pascalus',
    "Evansi anthias, evan's anthias / Pseudanthias evansi",
    'Sunburst anthias, fathead anthias / Serranocirrhitus latus',
    'Deepwater anthias, borbonius anthias / Odontanthias, Odontanthias borbonius, Tosanoides',
  ]),
];

/** Clownfish, chromis and damsels. */
export const clownfishAndDamsels = [
  ...toleranceEntries({ advice: 'usual care', reason: 'clownfish', source: 'Memory' }, [
    'Clownfish, clown fish, clown, anemonefish, anemone fish, anemone clownfish / Amphiprion, Amphiprioninae',
    'Ocellaris clownfish, ocellaris, ocellaris clown, false percula, common clownfish / Amphiprion ocellaris',
    'Percula clownfish, percula, percula clown, true percula / Amphiprion percula',
    'Maroon clownfish, maroon clown, gold stripe maroon / Premnas biaculeatus, Amphiprion biaculeatus, Premnas',
    'Tomato clownfish, tomato clown / Amphiprion frenatus',
    'Cinnamon clownfish, cinnamon clown / Amphiprion melanopus',
    "Clark's clownfish, clarkii clownfish, clarkii clown / Amphiprion clarkii",
    'Pink skunk clownfish, skunk clownfish, skunk clown / Amphiprion perideraion, Amphiprion akallopisos',
    'Saddleback clownfish, saddleback clown / Amphiprion polymnus',
  ]),
  ...toleranceEntries({ advice: 'usual care', reason: 'chromis', source: 'Memory' }, [
    'Chromis, chromises, black chromis, blue chromis / Chromis, Chromis cyanea, Azurina',
    'Blue-green chromis, green chromis, blue green reef chromis / Chromis viridis',
  ]),
  ...toleranceEntries({ advice: 'usual care', reason: 'usual', source: 'Memory' }, [
    'Damsels, damsel, damselfish, damsel fish / Pomacentridae, Chrysiptera, Pomacentrus, Stegastes, Neopomacentrus, Neoglyphidodon',
    'Blue devil damsel, blue damsel, blue devil, sapphire devil / Chrysiptera cyanea',
    'Yellowtail damsel, yellowtail blue damsel, yellow tail damsel / Chrysiptera parasema',
    'Azure damsel / Chrysiptera hemicyanea',
    'Domino damsel, three-spot dascyllus, threespot damsel / Dascyllus trimaculatus, Dascyllus',
    'Humbug damsel, three-stripe damsel, four-stripe damsel, humbug / Dascyllus aruanus, Dascyllus melanurus',
    'Sergeant major, sergeant major damsel / Abudefduf, Abudefduf saxatilis, Abudefduf vaigiensis',
    'Garibaldi / Hypsypops rubicundus',
    'Jewel damsel / Microspathodon chrysurus',
  ]),
];
