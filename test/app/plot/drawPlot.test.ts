import { readdirSync, readFileSync } from 'node:fs';
import { JSDOM } from 'jsdom';
import { parseHTML } from 'linkedom';
import { drawPlot } from '../../../src/app/plot/drawPlot.js';
import { plotColours } from '../../../src/app/plot/plotLooks.js';
import type { PlotData } from '../../../src/app/plot/plotParts.js';
import { contrast } from './contrast.js';
import { bigLog, plotCases } from './plotCases.js';
import { svgTexts } from './svgTexts.js';

const { document } = parseHTML('<!doctype html><html></html>');
const cases = plotCases();
const draw = (data: PlotData, width = 760, height = 400) => drawPlot(data, { document, width, height });
const readingsOf = (svg: Element) => Array.from(svg.querySelectorAll('.reading'));

describe('drawPlot', () => {
  it.each(Object.entries(cases))('draws %s without a text over another or cut off, wide and narrow', (_, data) => {
    for (const width of [320, 400, 560, 760, 1200]) {
      const svg = draw(data, width);
      const height = Number(svg.getAttribute('height'));
      const texts = svgTexts(svg);
      expect(texts.length).toBeGreaterThan(8);
      const out = texts.filter(
        ({ left, right, top, bottom }) => left < -1 || right > width + 1 || top < 0 || bottom > height,
      );
      expect(out).toEqual([]);
      const over = texts.flatMap((one, at) =>
        texts
          .slice(at + 1)
          .filter(
            (other) =>
              one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom,
          )
          .map((other) => `${one.text} / ${other.text}`),
      );
      expect(over).toEqual([]);
    }
  });

  it.each(Object.entries(cases))('of %s draws numbers alone, no NaN and no undefined', (_, data) => {
    expect(draw(data).outerHTML).not.toMatch(/NaN|undefined|Infinity|null/);
  });

  it('gives each reading a mark with its row, time, level and place, and words on pointing', () => {
    const svg = draw(cases['past']!);
    const marks = readingsOf(svg);
    const told = marks.map((mark) => [Number(mark.getAttribute('data-row')), Number(mark.getAttribute('data-level'))]);
    const wanted = cases['past']!.readings.map(({ row, level }) => [row, level]);
    expect(told.sort((a, b) => a[0]! - b[0]!)).toEqual(wanted);
    const broke = marks.find((mark) => mark.getAttribute('data-row') === '22');
    expect(broke?.getAttribute('data-status')).toBe('below');
    expect(broke?.textContent).toBe('2026-01-13 20:00: 1.85 mg/L, below, row 22');
  });

  it('tells readings apart by their shapes: in the band, below and above', () => {
    const shapes = new Map<string, Set<string>>();
    for (const name of ['past', 'off the scale'])
      for (const mark of readingsOf(draw(cases[name]!))) {
        const status = mark.getAttribute('data-status') ?? '';
        shapes.set(status, (shapes.get(status) ?? new Set()).add(mark.getAttribute('d') ?? ''));
      }
    expect([...shapes.keys()].sort()).toEqual(['above', 'below', 'in band']);
    for (const drawn of shapes.values()) expect(drawn.size).toBe(1);
    expect(new Set([...shapes.values()].flatMap((drawn) => [...drawn])).size).toBe(3);
  });

  it('says where it has put moments and levels, and puts what is off the scale at its top', () => {
    const data = cases['off the scale']!;
    const svg = draw(data);
    const [x, y] = [svg.scale('x'), svg.scale('y')];
    for (const mark of readingsOf(svg)) {
      const at = /translate\(([^,]*),([^)]*)\)/.exec(mark.getAttribute('transform') ?? '');
      expect(Number(at?.[1])).toBeCloseTo(x.apply(Number(mark.getAttribute('data-when'))), 6);
      expect(Number(at?.[2])).toBeCloseTo(y.apply(Number(mark.getAttribute('data-level'))), 6);
    }
    const [inBand = NaN, off = NaN] = [2.2, 19].map((level) => y.apply(level));
    expect(off).toBeLessThan(inBand);
    expect(y.apply(12)).toBe(off);
    // The band keeps a good part of the height.
    expect(y.apply(1.95) - y.apply(2.55)).toBeGreaterThan(20);
    expect(svg.textContent).toMatch(/Off the scale.*19 mg\/L on .*\(row 4\), ?12 mg\/L on .*\(row 6\)/);
  });

  it('draws a long log with few marks, and nothing below the band vanishes', () => {
    const data = bigLog();
    const svg = draw(data);
    const marks = readingsOf(svg);
    expect(marks.length).toBeLessThanOrEqual(1500);
    expect(marks.length).toBeGreaterThan(500);
    const below = data.readings.filter(({ status }) => status === 'below');
    const drawn = marks.filter((mark) => mark.getAttribute('data-status') === 'below');
    expect(below.length).toBe(20);
    const rows = new Set(drawn.map((mark) => Number(mark.getAttribute('data-row'))));
    expect(below.filter(({ row }) => !rows.has(row))).toEqual([]);
    expect(svg.textContent).toContain('Of 20000 readings, the lowest and the highest in each pixel are drawn.');
    expect(svg.outerHTML.length).toBeLessThan(700_000);
  });

  it('is the same picture by a page as without one', () => {
    const page = new JSDOM('<!doctype html>').window.document;
    for (const name of ['past', 'two readings', 'no top']) {
      const [one, other] = [document, page].map((made) => {
        const svg = drawPlot(cases[name]!, { document: made, width: 700, height: 380 });
        return Array.from(svg.querySelectorAll('*'), (element) => [
          element.tagName.toLowerCase(),
          ...Array.from(element.attributes, ({ name: attribute, value }) => `${attribute}=${value}`).sort(),
          element.children.length === 0 ? element.textContent : '',
        ]);
      });
      expect(one).toEqual(other);
    }
  });

  it('has a title and a description that it refers to, and ids of its own where a page has two', () => {
    const svg = drawPlot(cases['past']!, { document, width: 700, height: 380, id: 'mine' });
    expect(svg.getAttribute('role')).toBe('img');
    expect(svg.getAttribute('aria-labelledby')).toBe('mine-title');
    expect(svg.querySelector('title')?.getAttribute('id')).toBe('mine-title');
    expect(svg.querySelector('desc')?.getAttribute('id')).toBe(svg.getAttribute('aria-describedby'));
    expect(svg.querySelector('desc')?.textContent).toContain('44 readings');
    const ids = Array.from(svg.querySelectorAll('[id]'), (element) => element.id);
    expect(ids.every((id) => id.startsWith('mine-'))).toBe(true);
    expect(svg.outerHTML).not.toMatch(/url\(|<style|<script|href/);
  });

  it('keeps 4.5:1 for its texts and 3:1 for its marks, on paper and on the band', () => {
    for (const data of Object.values(cases)) {
      for (const { text, fill } of svgTexts(draw(data))) {
        // White stands in the bars of holds that were long enough.
        const ground = fill === plotColours.paper ? plotColours.deep : plotColours.paper;
        expect([text, contrast(fill, ground) >= 4.5]).toEqual([text, true]);
      }
    }
    const { inBand, below, above, course, limit, deep, ink, paper, zone } = plotColours;
    for (const mark of [inBand, below, above, course, limit, deep, ink])
      for (const ground of [paper, zone]) expect(contrast(mark, ground)).toBeGreaterThanOrEqual(3);
  });

  it('names in its key what it shows and nothing else', () => {
    const words = (data: PlotData) => svgTexts(draw(data)).map(({ text }) => text);
    expect(words(cases['past']!)).toEqual(
      expect.arrayContaining(['reading in the band', 'hold too short', 'fish died']),
    );
    expect(words(cases['past']!)).not.toContain('hold long enough');
    expect(words(cases['one reading']!)).toContain('hold running');
    expect(words(cases['one reading']!)).not.toContain('reading below');
    expect(words(cases['no reading']!)).toEqual(expect.arrayContaining(['The log has no reading.', 'no hold began']));
    expect(words(cases['past']!)).toEqual(expect.arrayContaining(['low limit', '1.95 mg/L', 'top', '2.55 mg/L']));
    expect(words(cases['other unit']!)).toContain('copper cell not read');
    expect(words(cases['past']!)).toContain('24.5 days');
    expect(words(cases['past']!)).toContain('break: below, row 22');
  });

  it('knows no clock and no zone: its times are serial days from first to last', () => {
    const files = readdirSync('src/app/plot').map((name) => readFileSync(`src/app/plot/${name}`, 'utf8'));
    expect(files.length).toBeGreaterThan(20);
    expect(files.filter((text) => /\bDate\b|'utc'|'time'/.test(text))).toEqual([]);
    expect(svgTexts(draw(cases['past']!)).map(({ text }) => text)).toEqual(
      expect.arrayContaining(['5 Jan', '13 Jan', '14 Feb']),
    );
  });

  it('grows where there is much to say rather than lie flat', () => {
    const svg = draw(cases['past']!, 360, 200);
    expect(Number(svg.getAttribute('height'))).toBeGreaterThan(300);
  });
});
