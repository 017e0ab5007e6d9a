import { toleranceEntries } from '../toleranceEntries.js';

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
