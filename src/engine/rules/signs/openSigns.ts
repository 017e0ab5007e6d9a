import type { SignReading } from './signReading.js';
import type { SignTopic } from './clauseTopics.js';

/** Whether words about some topics say that a fish with this sign is well again. */
function isAnswered(sign: SignTopic, well: readonly SignTopic[]): boolean {
  if (well.includes('all') || well.includes('feeding well') || well.includes(sign)) return true;
  return (sign === 'listless' || sign === 'deaths') && well.includes('feeding');
}

/**
 * The signs of an episode that no text has answered yet, for each fish named and for those not named.
 *
 * Definition: each sign is answered by a text about the same thing ("breathing normal" after heavy breathing), by one
 * about the whole fish ("all fine"), and by one that it eats as it should ("eating well", "eating again", "all eating"),
 * the commonest note of a recovery. A bare "eating" answers not eating, lethargy and, from the fish left, a death. "No
 * spots" answers spots alone. After three clear days a bare "eating" or "none" answers every sign. A text about
 * other fish answers nothing.
 */
export class OpenSigns {
  private readonly topics = new Map<string, Set<SignTopic>>();

  get areNone(): boolean {
    return this.topics.size === 0;
  }

  note({ fish, ails }: SignReading): void {
    if (ails.length === 0) return;
    for (const name of fish.length === 0 ? [unnamed] : fish) {
      const open = this.topics.get(name) ?? new Set();
      ails.forEach((topic) => open.add(topic));
      this.topics.set(name, open);
    }
  }

  /** @param quiet three clear days have gone by */
  answer({ fish, well, continuing }: SignReading, quiet: boolean): void {
    const answersAll = quiet && (well.includes('feeding') || (well.length === 0 && !continuing));
    for (const [name, open] of this.topics) {
      if (fish.length > 0 && name !== unnamed && !fish.includes(name)) continue;
      for (const sign of open) if (answersAll || isAnswered(sign, well)) open.delete(sign);
      if (open.size === 0) this.topics.delete(name);
    }
  }
}

const unnamed = '';
