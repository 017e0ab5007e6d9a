import { toleranceEntries } from '../toleranceEntries.js';

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
