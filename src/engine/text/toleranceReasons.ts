import type { ToleranceReason } from '../fish/toleranceEntry.js';

const slowly = 'raise slowly, over about seven days, and keep to the low end of the band';

/** Why a fish has its advice, a sentence for each. */
export const toleranceReasons: Readonly<Record<ToleranceReason, string>> = {
  invertebrate:
    'Copper at treatment levels is lethal to most invertebrates: keep it out of the copper tank and its water.',
  'live-rock':
    'It carries invertebrates, to most of which copper is lethal; it also takes copper up and gives it back (common practice).',
  algae: 'Copper kills algae and plants too: keep it out of the copper tank.',
  elasmobranch: 'Many sharks, skates and rays are killed by copper; the source gives no level that they bear.',
  chimaera: 'Close kin of sharks and rays, many of which are killed by copper.',
  syngnathid: 'Seahorses, pipefish and their kin are known to be sensitive to copper.',
  'syngnathid-kin': 'Near kin of seahorses and pipefish, which are known to be sensitive to copper.',
  dragonet: 'Without scales, under thick slime, and slow to eat in a bare tank: most keepers choose another treatment.',
  puffer: `Without true scales, and said to take copper badly: ${slowly}.`,
  boxfish:
    'Bare skin over a bony box, and able to poison its own tank under stress: most keepers choose another treatment.',
  eel: 'Bare skin, and said to take copper badly: most keepers choose another treatment.',
  lionfish: `Few or small scales, and said to take copper badly: ${slowly}.`,
  frogfish: 'Bare skin, and said to take copper badly: most keepers choose another treatment.',
  scaleless: 'Without scales, and said to take copper badly: most keepers choose another treatment.',
  blenny: `Most blennies have no scales: ${slowly}.`,
  mudskipper: 'Breathes through bare skin, and lives in less salt than copper is used at: choose another treatment.',
  jawfish: `Easily stressed in a bare tank, and said to take copper badly; give it a tube to live in, and ${slowly}.`,
  goby: `A mixed family, some of it without scales: ${slowly}.`,
  'scaleless-goby': `Without scales, under thick slime: ${slowly}.`,
  dartfish: `Easily frightened, and said to take copper badly; cover the tank, give it a tube, and ${slowly}.`,
  'hardy-goby': 'Scaled gobies usually take copper that is raised slowly; sand sifters need feeding in a bare tank.',
  'dwarf-angelfish': `Flame angelfish, of this group, died at 0.15 to 0.25 mg/L free copper in a tiny study: ${slowly}.`,
  'flame-angelfish': `It died at 0.15 to 0.25 mg/L free copper in a tiny study: ${slowly}.`,
  'large-angelfish': `Often stops eating in copper: ${slowly}.`,
  butterflyfish: `Often stops eating in copper: ${slowly}.`,
  'coral-eater':
    'Lives on coral and starves in a bare tank before a hold is over: most keepers do not use copper on it.',
  'poor-eater': `Hard to get to eat, and copper makes it harder; let it eat well before the first dose, then ${slowly}.`,
  tang: `Usually bears it, but often eats less in copper: ${slowly}.`,
  'delicate-tang': `Among the least tolerant of the tangs, and quick to fall ill without treatment: ${slowly}.`,
  wrasse: `Many wrasses take copper badly: ${slowly}.`,
  'sand-sleeper': `Many wrasses take copper badly; this one sleeps in sand, so give it a tray of inert silica sand, and ${slowly}.`,
  'delicate-wrasse':
    'Sleeps in sand, eats little in a bare tank and is said to take copper badly: most keepers choose another treatment.',
  'hardy-wrasse': 'Among the hardier of the wrasses; usually takes copper that is raised slowly and tested daily.',
  'cleaner-wrasse': 'Lives on what it picks from other fish, starves alone, and is said to take copper badly.',
  anthias: `Must be fed several times a day, and often stops eating in copper: ${slowly}.`,
  'deep-anthias':
    'From deep water, hard to get to eat, and said to take copper badly: most keepers choose another treatment.',
  soapfish: `May poison its own tank under stress: alone, and ${slowly}.`,
  'little-known': `Little is known of it in copper, or it eats poorly in quarantine: ${slowly}.`,
  clownfish:
    'Usually takes copper that is raised slowly; but Brooklynella, common in clownfish, is not treated by copper.',
  chromis: 'Usually takes copper that is raised slowly; but Uronema, common in chromis, is not treated by copper.',
  'orchid-dottyback':
    'Usually takes copper that is raised slowly (from memory); breeding pairs spawned less at 0.10 mg/L, and recovered after it.',
  molly: 'Used to sea water by degrees, it usually takes copper; black mollies also serve as sentinels after it.',
  usual: 'Usually takes copper that is raised slowly and tested daily; fish die inside the band too.',
};
