import { toleranceEntries } from '../toleranceEntries.js';

/** Eels, morays among them. */
export const eels = toleranceEntries({ advice: 'avoid', reason: 'eel', source: 'Memory' }, [
  'Eels, eel, snake eel, conger, tiger snake eel / Anguilliformes, Ophichthidae, Conger, Myrichthys',
  'Moray eels, moray, moray eel, dwarf moray, dragon moray, tessellata eel / Muraenidae, Gymnothorax, Echidna, Enchelycore, Enchelycore pardalis, Gymnothorax melatremus, Gymnothorax favagineus',
  'Snowflake eel, snowflake moray / Echidna nebulosa',
  'Zebra moray, zebra eel, zebra moray eel / Gymnomuraena zebra',
  'Ribbon eel, blue ribbon eel, black ribbon eel / Rhinomuraena quaesita, Rhinomuraena',
  'Garden eels, garden eel, spotted garden eel, splendid garden eel / Heteroconger, Heteroconger hassi, Gorgasia, Gorgasia preclara',
]);
