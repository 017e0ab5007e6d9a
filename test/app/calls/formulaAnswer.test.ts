import { formulaAnswer } from '../../../src/app/calls/formulaAnswer';
import { bundle } from '../../sheet/recalc/testBook';

async function gives(formula: string): Promise<unknown> {
  const answer = await formulaAnswer(formula, bundle, 46_100.5);
  return answer.kind === 'cell' ? answer.value : answer.kind === 'table' ? answer.rows : [answer.code, answer.message];
}

describe('formulaAnswer', () => {
  it.each<[string, unknown]>([
    ['=QT.MGPERL("2.05 ppm")', 2.05],
    ['QT.BAND("chelated")', [[1.95, 2.55]]],
    ['band("chelated")', [[1.95, 2.55]]],
    ['=1+2*3', 7],
    ['=SUM(1,2)', 3],
    ['=ROUND(QT.MGPERL("2.055 ppm"),1)', 2.1],
    ['=ROUND(mgperl("2.055 ppm"),1)', 2.1],
    ['=INDEX(QT.BAND("chelated"),1,2)', 2.55],
    ['=IFERROR(QT.BAND("ionic"),"?")', '?'],
    ['=LET(b,QT.BAND("amine"),INDEX(b,1)+INDEX(b,2))', 1],
    ['=TEXT(NOW(),"yyyy-mm-dd")', '2026-03-19'],
    ['=QT.HOLDDAYS({46082;46083},{2.1;2.2},"chelated",NOW())', 2.5],
    ['=_xldudf_QT_BAND("amine")', [[0.45, 0.55]]],
    ['=QT.BAND ( "amine" )', [[0.45, 0.55]]],
    ['=QT.CHANGESTOCLEAR(2, 0.01, 25%)', 19],
    ['=QT.CHANGESTOCLEAR({2}, 0.01, {25%})', 19],
    ['=QT.DOSE(+200,"0 mg/L",2.25,1e1)', 45],
  ])('works out %s', async (formula, expected) => {
    expect(await gives(formula)).toEqual(expected);
  });

  it('gives the sentence of a refusal, also from within', async () => {
    const [code, message] = (await gives('=QT.BAND("ionic")')) as [string, string];
    expect(code).toBe('#VALUE!');
    expect(message).toContain('ionic');
    expect(await gives('=INDEX(QT.BAND("ionic"),1)')).toEqual([code, message]);
    expect(await gives('=1/0')).toEqual(['#DIV/0!', '']);
  });

  it.each([
    ['=QT.MGPERL(B2)', '#REF!', 'there is no sheet to look for B2 in; write the value itself'],
    ['=SUM(A:A)', '#REF!', 'there is no sheet to look for A:A in; write the value itself'],
    ['=QT.AUDIT(Log[#All],1)', '#REF!', 'there is no sheet to look for Log[#All] in; write the value itself'],
    ['=QT.NOPE(1)', '#NAME?', 'there is no function QT.NOPE'],
    [
      '=QT.BAND(chelated)',
      '#NAME?',
      'the formula uses the name chelated, which is not known here; put a text in quotes',
    ],
    ['=QT.BAND("amine"', '#NAME?', 'the formula lacks a comma or a closing bracket at its end'],
    ['=QT.BAND("amine") 2', '#NAME?', 'the formula should end before 2'],
    ['=ROUND(QT.NOPE(1),2)', '#NAME?', 'there is no function QT.NOPE'],
    ['=FOO(1)+1', '#NAME?', 'the formula calls FOO, which is not supported here'],
    ['=INDEX(QT.BAND("amine"),1', '#NAME?', 'the formula lacks a comma or a closing bracket at its end'],
    ['', '#NAME?', 'write a formula, such as =QT.BAND("chelated")'],
  ])('refuses %s', async (formula, code, message) => {
    expect(await gives(formula)).toEqual([code, message]);
  });

  it('starts no library for a plain call', async () => {
    let loaded = false;
    await jest.isolateModulesAsync(async () => {
      jest.doMock('@univerjs/engine-formula', () => {
        loaded = true;
        return {};
      });
      const { formulaAnswer: fresh } = await import('../../../src/app/calls/formulaAnswer');
      expect(await fresh('=QT.BAND("amine")', bundle, 1)).toEqual({ kind: 'table', rows: [[0.45, 0.55]] });
    });
    jest.dontMock('@univerjs/engine-formula');
    expect(loaded).toBe(false);
  });
});
