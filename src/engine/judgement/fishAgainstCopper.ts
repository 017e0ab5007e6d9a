import { fishCount } from '../fish/fishCount.js';
import { tolerance } from '../fish/tolerance.js';
import type { Treatment } from '../rules/treatment.js';
import { fishRoster } from '../audit/fishRoster.js';

/** A fish that is there although the list speaks against copper for it. */
interface FishAgainstCopper {
  readonly fish: string;
  readonly advice: 'never' | 'avoid';
}

/** The fish still in the system that the list says never to treat with copper, or to keep from it: never first. */
export function fishAgainstCopper(treatment: Treatment): readonly FishAgainstCopper[] {
  const found = fishRoster(treatment)
    .filter(({ left }) => left === null)
    .flatMap(({ written }) => fishCount(written, 'fish in').groups)
    .flatMap(({ name }): readonly FishAgainstCopper[] => {
      const said = name === '' ? null : tolerance(name);
      const advice = said?.kind === 'listed' ? said.entry.advice : null;
      return advice === 'never' || advice === 'avoid' ? [{ fish: name, advice }] : [];
    });
  return [...found.filter(({ advice }) => advice === 'never'), ...found.filter(({ advice }) => advice === 'avoid')];
}
