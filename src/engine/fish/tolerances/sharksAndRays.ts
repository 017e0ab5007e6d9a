import { toleranceEntries } from '../toleranceEntries.js';

/** Fish with skeletons of cartilage. */
export const sharksAndRays = [
  ...toleranceEntries({ advice: 'avoid', reason: 'elasmobranch', source: 'FishHealthPage' }, [
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
