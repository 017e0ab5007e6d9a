import { type FormName, copperForms } from '../dose/forms.js';
import { pacePlan, type Pace } from '../dose/pacePlan.js';
import { ramp, type RampStep } from '../dose/ramp.js';
import { copperMgPerLitre, copperMgPerMl, litres, millilitres, type SerialDay } from '../units/quantity.js';

interface Raising {
  readonly start: SerialDay;
  readonly form: FormName;
  readonly pace: Pace;
}

/**
 * The dose of a raise from which on the test decides.
 *
 * Definition: the first dose of RAMP at or past 80 % of the aim, from no copper, in equal doses that no syringe rounds.
 *
 * @param raising.start time of the first dose [serial day]
 * @param raising.form form of copper, raised to its aim
 * @param raising.pace name, or number of days
 * @returns that dose, with its time and the level after it
 * @example decidingDose({ start: serialDay(46082), form: 'chelated', pace: 'gradual' }).at // = 46085
 */
export function decidingDose({ start, form, pace }: Raising): Pick<RampStep, 'at' | 'levelAfter'> {
  const { aim } = copperForms[form];
  const { days, dosesADay } = pacePlan(pace);
  const steps = ramp({
    // A millilitre of a solution as strong as the aim raises as many litres as there are doses by one dose's share.
    volume: litres(days * dosesADay),
    strength: copperMgPerMl(aim),
    smallest: millilitres(1),
    level: copperMgPerLitre(0),
    wanted: aim,
    start,
    pace,
    form,
  });
  const deciding = steps.ok ? steps.value.find(({ testDecides }) => testDecides) : undefined;
  if (deciding === undefined) throw new Error('a raise to the aim has a dose that reaches 80 % of it');
  return deciding;
}
