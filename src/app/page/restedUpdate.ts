/** After the last change, so that typing goes on undisturbed. [ms] */
const shortestRest = 150;
const longestRest = 3000;
/** What costs less than this is not worth waiting for longer. [ms] */
const cheap = 50;

/** Runs an update once changes have come to rest; the more it costs, the longer the rest. */
export class RestedUpdate {
  private timer = 0;
  private rest = shortestRest;

  constructor(
    private readonly name: string,
    private readonly update: () => void,
  ) {}

  later(rest = this.rest): void {
    window.clearTimeout(this.timer);
    this.timer = window.setTimeout(() => this.run(), rest);
  }

  private run(): void {
    const start = performance.now();
    this.update();
    const took = performance.measure(this.name, { start }).duration;
    if (took > cheap) this.rest = Math.min(longestRest, Math.max(shortestRest, took * 3));
  }
}
