import type { ToleranceReason } from '../fish/toleranceEntry.js';

const slowly = 'raise slowly, over about seven days, and keep to the low end of the band';

/** Why a fish has its advice, a sentence for each. */
export const toleranceReasons: Readonly<Record<ToleranceReason, string>> = {
  invertebrate:
    'Copper at treatment levels is lethal to most invertebrates: keep it out of the copper tank and its water.',
  'live-rock':
    'It carries invertebrates, most of which copper kills; it also takes up copper and releases it later (common practice).',
  algae: 'Copper kills algae and plants too: keep it out of the copper tank.',
  elasmobranch: 'Many sharks, skates and rays are killed by copper; the source gives no level they tolerate.',
  chimaera: 'Closely related to sharks and rays, many of which are killed by copper.',
  syngnathid: 'Seahorses, pipefish and their relatives are known to be sensitive to copper.',
  'syngnathid-kin': 'Closely related to seahorses and pipefish, which are known to be sensitive to copper.',
  dragonet: 'No scales, a thick slime coat, and slow to eat in a bare tank: most keepers choose another treatment.',
  puffer: `No true scales, and said to tolerate copper poorly: ${slowly}.`,
  boxfish:
    'Bare skin over a bony box, and can poison its own tank under stress: most keepers choose another treatment.',
  eel: 'Bare skin, and said to tolerate copper poorly: most keepers choose another treatment.',
  lionfish: `Few or small scales, and said to tolerate copper poorly: ${slowly}.`,
  frogfish: 'Bare skin, and said to tolerate copper poorly: most keepers choose another treatment.',
  scaleless: 'No scales, and said to tolerate copper poorly: most keepers choose another treatment.',
  blenny: `Most blennies have no scales: ${slowly}.`,
  mudskipper:
    'Breathes through bare skin, and lives at a lower salinity than copper is used at: choose another treatment.',
  jawfish: `Easily stressed in a bare tank, and said to tolerate copper poorly; give it a tube to live in, and ${slowly}.`,
  goby: `A mixed family, some without scales: ${slowly}.`,
  'scaleless-goby': `No scales and a thick slime coat: ${slowly}.`,
  dartfish: `Easily frightened, and said to tolerate copper poorly; cover the tank, give it a tube, and ${slowly}.`,
  'hardy-goby':
    'Scaled gobies usually tolerate copper that is raised slowly; sand sifters need feeding in a bare tank.',
  'dwarf-angelfish': `Flame angelfish, of this group, died at 0.15 to 0.25 mg/L free copper in a tiny study: ${slowly}.`,
  'flame-angelfish': `It died at 0.15 to 0.25 mg/L free copper in a tiny study: ${slowly}.`,
  'large-angelfish': `Often stops eating in copper: ${slowly}.`,
  butterflyfish: `Often stops eating in copper: ${slowly}.`,
  'coral-eater':
    'Lives on coral and starves in a bare tank before a hold is over: most keepers do not use copper on it.',
  'poor-eater': `Hard to get eating, and copper makes it harder; let it eat well before the first dose, then ${slowly}.`,
  tang: `Usually tolerates copper, but often eats less in it: ${slowly}.`,
  'delicate-tang': `One of the least tolerant tangs, and quick to fall ill without treatment: ${slowly}.`,
  wrasse: `Many wrasses tolerate copper poorly: ${slowly}.`,
  'sand-sleeper': `Many wrasses tolerate copper poorly; this one sleeps in sand, so give it a tray of inert silica sand, and ${slowly}.`,
  'delicate-wrasse':
    'Sleeps in sand, eats little in a bare tank and is said to tolerate copper poorly: most keepers choose another treatment.',
  'hardy-wrasse': 'One of the hardier wrasses; usually tolerates copper that is raised slowly and tested daily.',
  'cleaner-wrasse': 'Lives on what it picks off other fish, starves alone, and is said to tolerate copper poorly.',
  anthias: `Must be fed several times a day, and often stops eating in copper: ${slowly}.`,
  'deep-anthias':
    'From deep water, hard to get eating, and said to tolerate copper poorly: most keepers choose another treatment.',
  soapfish: `May poison its own tank under stress: treat it alone, and ${slowly}.`,
  'little-known': `Little is known of it in copper, or it eats poorly in quarantine: ${slowly}.`,
  clownfish:
    'Usually tolerates copper that is raised slowly; but Brooklynella, common in clownfish, is not treated by copper.',
  chromis: 'Usually tolerates copper that is raised slowly; but Uronema, common in chromis, is not treated by copper.',
  'orchid-dottyback':
    'Usually tolerates copper that is raised slowly (from memory); breeding pairs spawned less at 0.10 mg/L, and recovered after it.',
  molly:
    'Acclimated to sea water gradually, it usually tolerates copper; black mollies also serve as sentinels afterwards.',
  usual: 'Usually tolerates copper that is raised slowly and tested daily; fish die inside the band too.',
};
