import { toleranceEntries } from '../toleranceEntry.js';

/** Fish with skeletons of cartilage. */
export const sharksAndRays = [
  ...toleranceEntries({ advice: 'never', reason: 'elasmobranch', source: 'FishHealthPage' }, [
    'Sharks, shark, elasmobranch, cat shark, dogfish, houndshark, wobbegong, hammerhead, nurse shark / Selachii, Elasmobranchii, Atelomycterus, Scyliorhinus, Orectolobus, Triakis, Carcharhinus, Ginglymostoma cirratum, Stegostoma',
    'Bamboo sharks, bamboo shark, brown banded bamboo shark, white spotted bamboo shark / Chiloscyllium, Chiloscyllium punctatum, Chiloscyllium plagiosum',
    'Epaulette sharks, epaulette shark, walking shark / Hemiscyllium, Hemiscyllium ocellatum',
    'Horn sharks, horn shark, port jackson shark / Heterodontus, Heterodontus francisci',
    'Rays, ray, stingray, sting ray, skate, cownose ray, eagle ray, electric ray, torpedo ray / Batoidea, Dasyatidae, Rajidae, Rhinoptera, Aetobatus, Hypanus, Potamotrygon',
    'Blue-spotted rays, blue spotted ray, bluespot ray, blue spotted stingray / Taeniura lymma, Neotrygon kuhlii',
    'Round rays, round ray, round stingray, cortez ray / Urobatis, Urobatis halleri, Urobatis jamaicensis, Urolophus',
    'Guitarfish, guitar fish, shovelnose ray, banjo ray / Rhinobatos, Rhinobatidae',
  ]),
  ...toleranceEntries({ advice: 'avoid', reason: 'chimaera', source: 'Memory' }, [
    'Chimaeras, chimaera, ratfish, rat fish, elephant fish / Hydrolagus, Callorhinchus',
  ]),
];

/** Seahorses, pipefish and their kin. */
export const seahorsesAndPipefish = [
  ...toleranceEntries({ advice: 'avoid', reason: 'syngnathid', source: 'ZecHadfieldHungerford2017' }, [
    'Seahorses, seahorse, sea horse, lined seahorse, dwarf seahorse, tiger tail seahorse, potbelly seahorse, yellow seahorse / Hippocampus, Hippocampus erectus, Hippocampus kuda, Hippocampus reidi, Hippocampus comes, Hippocampus abdominalis, Hippocampus zosterae',
    'Pipefish, pipe fish, banded pipefish, bluestripe pipefish, dragonface pipefish, flagtail pipefish / Syngnathidae, Syngnathus, Doryrhamphus, Doryrhamphus excisus, Dunckerocampus, Dunckerocampus dactyliophorus, Corythoichthys',
    'Sea dragons, sea dragon, leafy sea dragon, weedy sea dragon / Phycodurus eques, Phyllopteryx taeniolatus',
    'Pipehorses, pipehorse, pygmy pipehorse / Acentronura',
  ]),
  ...toleranceEntries({ advice: 'avoid', reason: 'syngnathid-kin', source: 'Memory' }, [
    'Ghost pipefish, harlequin ghost pipefish / Solenostomus, Solenostomus paradoxus, Solenostomidae',
    'Shrimpfish, razorfish, coral shrimpfish / Aeoliscus, Aeoliscus strigatus, Centriscus, Centriscidae',
    'Sea moths, sea moth / Pegasus, Eurypegasus, Pegasidae',
    'Trumpetfish and cornetfish, trumpetfish, cornetfish, flutemouth / Aulostomus, Fistularia',
  ]),
];

/** Mandarins and dragonets. */
export const dragonets = toleranceEntries({ advice: 'avoid', reason: 'dragonet', source: 'Memory' }, [
  'Mandarin dragonet, mandarin, mandarin goby, mandarinfish, green mandarin, blue mandarin, striped mandarin / Synchiropus splendidus',
  'Spotted mandarin, target mandarin, psychedelic mandarin, picturesque dragonet / Synchiropus picturatus',
  'Scooter dragonet, scooter blenny, scooter, ocellated dragonet / Synchiropus ocellatus',
  'Ruby red dragonet, red scooter, red scooter blenny, red scooter dragonet, starry dragonet, starry blenny dragonet / Synchiropus sycorax, Synchiropus stellatus',
  'Dragonets, dragonet, finger dragonet / Callionymidae, Callionymus, Synchiropus, Dactylopus',
]);

/** Puffers, porcupinefish and boxfish. */
export const puffersAndBoxfish = [
  ...toleranceEntries({ advice: 'caution', reason: 'puffer', source: 'Memory' }, [
    'Puffers, puffer, pufferfish, blowfish / Tetraodontidae, Arothron, Takifugu, Sphoeroides',
    'Dogface puffer, dog face puffer, blackspotted puffer / Arothron nigropunctatus',
    'Stars and stripes puffer, white spotted puffer / Arothron hispidus',
    'Guineafowl puffer, golden puffer, spotted guineafowl puffer / Arothron meleagris',
    'Sharpnose puffers, toby, tobies, sharpnose puffer, blue spotted puffer, blue spotted toby / Canthigaster, Canthigaster solandri, Canthigaster papua',
    'Valentini puffer, saddle puffer, saddled toby, valentini / Canthigaster valentini',
    'Porcupinefish, porcupine puffer, porcupine, spiny puffer, balloonfish, burrfish / Diodontidae, Diodon, Diodon holocanthus, Diodon hystrix, Chilomycterus',
  ]),
  ...toleranceEntries({ advice: 'avoid', reason: 'boxfish', source: 'Memory' }, [
    'Boxfish, yellow boxfish, cubicus boxfish, spotted boxfish, blue boxfish / Ostraciidae, Ostracion, Ostracion cubicum, Ostracion cubicus, Ostracion meleagris',
    'Cowfish, longhorn cowfish, thornback cowfish / Lactoria, Lactoria cornuta, Lactoria fornasini',
    'Trunkfish / Lactophrys, Lactophrys triqueter',
  ]),
];

/** Eels, morays among them. */
export const eels = toleranceEntries({ advice: 'avoid', reason: 'eel', source: 'Memory' }, [
  'Eels, eel, snake eel, conger, tiger snake eel / Anguilliformes, Ophichthidae, Conger, Myrichthys',
  'Moray eels, moray, moray eel, dwarf moray, dragon moray, tessellata eel / Muraenidae, Gymnothorax, Echidna, Enchelycore, Enchelycore pardalis, Gymnothorax melatremus, Gymnothorax favagineus',
  'Snowflake eel, snowflake moray / Echidna nebulosa',
  'Zebra moray, zebra eel, zebra moray eel / Gymnomuraena zebra',
  'Ribbon eel, blue ribbon eel, black ribbon eel / Rhinomuraena quaesita, Rhinomuraena',
  'Garden eels, garden eel, spotted garden eel, splendid garden eel / Heteroconger, Heteroconger hassi, Gorgasia, Gorgasia preclara',
]);

/** Lionfish, frogfish, blennies and others with few scales or none. */
export const scalelessFish = [
  ...toleranceEntries({ advice: 'caution', reason: 'lionfish', source: 'Memory' }, [
    'Lionfish, lion fish, turkeyfish, volitans, volitans lionfish, radiata lionfish / Pterois, Pterois volitans, Pterois radiata, Pterois antennata',
    'Dwarf lionfish, fuzzy dwarf lionfish, zebra lionfish, fu manchu lionfish / Dendrochirus, Dendrochirus zebra, Dendrochirus brachypterus, Dendrochirus biocellatus',
    'Scorpionfish, scorpion fish, coral scorpionfish, rhinopias, waspfish, sea goblin, stingfish / Scorpaenidae, Scorpaena, Scorpaenopsis, Ablabys, Inimicus',
    'Stonefish, stone fish / Synanceia, Synanceia verrucosa',
    'Leaf scorpionfish, leaf fish, paper scorpionfish / Taenianotus triacanthus',
    'Coral crouchers, coral croucher, velvetfish / Caracanthus',
  ]),
  ...toleranceEntries({ advice: 'avoid', reason: 'frogfish', source: 'Memory' }, [
    'Frogfish, frog fish, angler, anglerfish, sargassumfish, wartskin angler / Antennariidae, Antennarius, Antennatus, Histrio histrio',
    'Walking batfish, handfish / Ogcocephalidae, Ogcocephalus, Halieutaea',
  ]),
  ...toleranceEntries({ advice: 'avoid', reason: 'scaleless', source: 'Memory' }, [
    'Scaleless fish, scaleless',
    'Coral catfish, striped eel catfish, eel catfish, catfish / Plotosus lineatus, Plotosidae',
    'Clingfish, urchin clingfish / Gobiesocidae, Diademichthys lineatus',
    'Toadfish, oyster toadfish, stargazer / Batrachoididae, Opsanus, Uranoscopus',
    'Convict blenny, engineer goby / Pholidichthys leucotaenia',
  ]),
  ...toleranceEntries({ advice: 'avoid', reason: 'mudskipper', source: 'Memory' }, [
    'Mudskippers, mudskipper / Periophthalmus',
  ]),
  ...toleranceEntries({ advice: 'caution', reason: 'blenny', source: 'Memory' }, [
    'Blennies, blenny, barnacle blenny, mussel blenny, oyster blenny, coral blenny / Blenniidae, Salarias, Ecsenius, Cirripectes, Ophioblennius, Blenniella',
    'Lawnmower blenny, jewelled blenny, algae blenny / Salarias fasciatus',
    'Bicolor blenny, bicolour blenny / Ecsenius bicolor',
    'Midas blenny, golden blenny / Ecsenius midas',
    'Tailspot blenny / Ecsenius stigmatura',
    'Fang blennies, fang blenny, canary blenny, lyretail blenny, sabretooth blenny / Meiacanthus, Meiacanthus oualanensis, Plagiotremus',
  ]),
  ...toleranceEntries({ advice: 'caution', reason: 'jawfish', source: 'Memory' }, [
    'Jawfish, yellowhead jawfish, pearly jawfish, blue spot jawfish / Opistognathidae, Opistognathus, Opistognathus aurifrons, Opistognathus rosenblatti',
  ]),
];
