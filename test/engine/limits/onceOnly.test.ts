import ts from 'typescript';
import * as limits from '../../../src/engine/limits/limits.js';
import { everyNode, sourcesIn } from '../../house/sources.js';

/** Rooms that decide, and the sentences that say why. */
const rooms = ['rules', 'audit', 'plan', 'text', 'dose', 'hold', 'judgement'].map((room) => `src/engine/${room}/`);
const sources = sourcesIn(['src']).filter(({ file }) => rooms.some((room) => file.startsWith(room)));
const values: readonly number[] = Object.values(limits).map(({ value }) => value);

/** Numbers that count, halve, turn a share into percent, a day into hours or minutes, and the like. */
const plain = new Set([0, 1, 2, 10, 24, 60, 100, 1000]);

/**
 * Other numbers, file by file: constants of a formula, of a search, or of the page. None decides what a keeper is told;
 * one that does belongs into the table of limits.
 */
const known: Readonly<Record<string, readonly number[]>> = {
  'src/engine/dose/forms.ts': [0.18, 0.21, 0.2, 0.45, 0.55, 0.5, 1.95, 2.55, 2.5, 2.25],
  'src/engine/dose/paceIn.ts': [365],
  'src/engine/dose/splitDose.ts': [1e-9, 4],
  'src/engine/hold/zeroOrUntested.ts': [2_000_000, 50],
  'src/engine/judgement/believedLevel.ts': [0.03],
  'src/engine/judgement/forecast.ts': [0.5],
  'src/engine/judgement/measured.ts': [1e-9],
  'src/engine/judgement/nextTest.ts': [1e-6],
  'src/engine/judgement/stage.ts': [1e-6],
  'src/engine/judgement/state.ts': [3600],
  'src/engine/judgement/tankLoss.ts': [0.003],
  'src/engine/judgement/task.ts': [3, 4, 5, 6],
  'src/engine/judgement/waterTasks.ts': [0.9],
  'src/engine/plan/medicineOf.ts': [7],
  'src/engine/rules/deaths.ts': [0.05],
  'src/engine/rules/doubleDose.ts': [30],
  'src/engine/rules/freeAmmoniaIn.ts': [0.26, 35, 1.22],
  'src/engine/rules/isDenied.ts': [5],
  'src/engine/rules/openHold.ts': [100_000, 20],
  'src/engine/rules/phrases.ts': [8, 4, 3, 0.01, 5],
  'src/engine/rules/signs/rememberedReading.ts': [10_000],
  'src/engine/rules/signs/signTokens.ts': [7],
  'src/engine/rules/steady/slipMeanings.ts': [4],
  'src/engine/rules/steady/steadyKnown.ts': [0.01, 12],
  'src/engine/rules/steady/steadyLevels.ts': [
    0.005, 0.012, 0.025, 0.05, 0.09, 0.15, 0.25, 0.4, 800, 0.6745, 4, 8, 0.003, 3,
  ],
  'src/engine/rules/steady/steadyPass.ts': [3, 4],
  'src/engine/rules/unionisedAmmonia.ts': [1e-9],
  'src/engine/rules/unitSlip.ts': [0.01, 12],
  'src/engine/rules/unknownColumns.ts': [4],
  'src/engine/text/deathsTable.ts': [4.1],
  'src/engine/text/planTexts/afterTexts.ts': [7],
};

/** Sentences that repeat a number of a source, or the validity of a formula. */
const quoted =
  /over 3–5 days|3–7 days on the fish|up to 28 days|28 days of tomites \+ 2|30 days or more|95 % of 42|8 ± 1 days|day \$|the 72-day tail|5 to 35 °C|like 30 or|like 96|with 95 %|at 25 °C|2 mg\/L bath|4\.8 µg\/L|24 hours/;

describe('a number that decides', () => {
  it('is read from real files', () => {
    expect(sources.length).toBeGreaterThan(100);
  });

  it('stands in no condition, sum or constant outside the table of limits', () => {
    const found: string[] = [];
    for (const { file, syntax } of sources) {
      const allowed = new Set([...plain, ...(known[file] ?? [])]);
      everyNode(syntax, (node) => {
        if (!ts.isNumericLiteral(node) || isOfPage(node) || isOfExample(node)) return;
        if (!allowed.has(Number(node.text))) found.push(`${file}: ${lineOf(node)}`);
      });
    }
    expect(found).toEqual([]);
  });

  it('is among those known numbers only where it still stands', () => {
    const stale = Object.entries(known).flatMap(([file, numbers]) => {
      const text = sources.find((source) => source.file === file)?.syntax.text ?? '';
      const plainText = text.replace(/_/g, '');
      return numbers
        .filter((number) => ![String(number), number.toExponential()].some((written) => plainText.includes(written)))
        .map((number) => `${file}: ${number}`);
    });
    expect(stale).toEqual([]);
  });

  it('stands in no sentence but as it is read from the table', () => {
    const found: string[] = [];
    for (const { file, syntax } of sources) {
      if (/signWords|cautions|messages|tolerance|treatmentWords|answerColumns|fishTables|deathsTable/.test(file))
        continue;
      everyNode(syntax, (node) => {
        if (!ts.isStringLiteralLike(node) && !isTemplatePart(node)) return;
        if (isOfExample(node)) return;
        for (const [, number = '', unit = ''] of node.text.matchAll(
          /(?<![\d.–-])(\d+(?:\.\d+)?) ?(h|hours|days|%|g\/kg|°C|mg\/L)\b/g,
        )) {
          const value = unit === '%' ? Number(number) / 100 : Number(number);
          if (values.includes(value) && !quoted.test(node.text))
            found.push(`${file}: ${number} ${unit} in "${node.text}"`);
        }
      });
    }
    expect(found).toEqual([]);
  });
});

function lineOf(node: ts.Node): string {
  const { text } = node.getSourceFile();
  const at = node.getStart();
  return text.slice(text.lastIndexOf('\n', at) + 1, text.indexOf('\n', at)).trim();
}

/** Places of a rounded number, letters that fit a cell, a place in a list. */
function isOfPage(node: ts.Node): boolean {
  const { parent } = node;
  if (ts.isElementAccessExpression(parent)) return true;
  if (!ts.isCallExpression(parent))
    return ts.isVariableDeclaration(parent) && /longest|shortened|most[A-Z]|places/.test(parent.name.getText());
  return /toFixed|toPrecision|slice|rounded|cut|millilitresText|repeat|padStart/.test(parent.expression.getText());
}

/** The example logs of a rule show both sides of its limits. */
function isOfExample(node: ts.Node): boolean {
  for (let at = node.parent; !ts.isSourceFile(at); at = at.parent) {
    if (ts.isPropertyAssignment(at) && at.name.getText() === 'examples') return true;
    if (ts.isFunctionDeclaration(at) && at.name?.text === 'daily') return true;
  }
  return false;
}

function isTemplatePart(node: ts.Node): node is ts.TemplateHead | ts.TemplateMiddle | ts.TemplateTail {
  return ts.isTemplateHead(node) || ts.isTemplateMiddle(node) || ts.isTemplateTail(node);
}
