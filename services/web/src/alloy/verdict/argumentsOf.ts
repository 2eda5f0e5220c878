import type { Explanation, Neighbour } from '@tiegel/contract';
import { decimalsBeside, isSame, reportsInWords } from '@tiegel/contract/terms';
import { missingFor, missingInWords } from '@tiegel/screening';
import { formatCount, formatNumber } from '../../numbers/formatNumber.ts';
import { kelvinInWords } from '../conditions/kelvinInWords.ts';
import type { AlloyState } from '../state/alloyState.ts';
import { sideOf } from './knownInWords.ts';

/** One thing to weigh: for one uniform phase, against it, open, or to mind in making and use. `at` is the part of the page that says more. */
export interface Argument {
  sign: 'for' | 'against' | 'open' | 'mind';
  words: string;
  at: string;
}

/** kJ/mol: Miedema's model errs by some 10, so what lies closer is undecided, here as in the server's own words. */
const modelError = 10;
/** Labels of publications that are one disordered solution. */
const oneSolution = new Set(['FCC', 'BCC']);

/** What speaks for one uniform phase, what against, what nobody can tell, and what to mind, in plain words; the strongest evidence first. */
export function argumentsOf(alloy: AlloyState): Argument[] {
  return [
    ...published(alloy),
    ...estimate(alloy),
    ...compounds(alloy),
    ...separation(alloy),
    ...secondPhases(alloy),
    ...rules(alloy),
    ...service(alloy),
    ...gaps(alloy),
  ];
}

function published({ explanation }: AlloyState): Argument[] {
  const known = explanation?.nearest.filter((one) => isSame(one) && one.reports.length > 0) ?? [];
  return known.map(reported);
}

function reported(known: Neighbour): Argument {
  if (known.own) {
    const [{ phases }] = known.reports as [Neighbour['reports'][0]];
    const from = known.melt === null ? 'You brought it in as' : 'In your own melt you observed';
    const uniform = oneSolution.has(phases.toUpperCase());
    return { sign: uniform ? 'for' : 'against', words: `${from} ${reportsInWords(known)}.`, at: 'nearest' };
  }
  const all = known.reports.reduce((sum, { references }) => sum + references, 0);
  const single = known.reports
    .filter(({ phases }) => oneSolution.has(phases.toUpperCase()))
    .reduce((sum, { references }) => sum + references, 0);
  const sign = single * 2 > all ? 'for' : single * 2 < all ? 'against' : 'open';
  return { sign, words: `Publications report ${reportsInWords(known)}.`, at: 'nearest' };
}

function estimate({ explanation }: AlloyState): Argument[] {
  if (!explanation) return [];
  const side = sideOf(explanation.phase);
  const words = {
    one: 'The estimate from published alloys expects one phase.',
    several: 'The estimate from published alloys expects more than one phase.',
    either: 'The estimate from published alloys cannot decide between one phase and more.',
  };
  if (side === null)
    return [
      { sign: 'open', words: 'No alloy in the table here is near enough for an estimate.', at: 'phases' },
    ];
  return [
    {
      sign: side === 'one' ? 'for' : side === 'several' ? 'against' : 'open',
      words: words[side],
      at: 'phases',
    },
  ];
}

function compounds({ explanation }: AlloyState): Argument[] {
  const found = explanation?.compounds;
  if (!found) return [];
  const { hullDistance, competing } = found;
  const partners = competing
    .map(({ formula }) => formula)
    .filter((formula) => /[A-Z].*[A-Z]/.test(formula))
    .slice(0, 2)
    .join(' and ');
  const size = Math.abs(hullDistance);
  const by = `${formatNumber(size, decimalsBeside(size, modelError, 1))} kJ/mol`;
  if (size < modelError) {
    const whether = partners === '' ? 'it separates into its elements' : `compounds such as ${partners} form`;
    const words = `Whether ${whether}, a simple model cannot tell: ${by} is within its error of ${modelError}.`;
    return [{ sign: 'open', words, at: 'competes' }];
  }
  if (hullDistance < 0) {
    const words = `In a simple model no compound forms, by ${by}; it may still separate into two solutions.`;
    return [{ sign: 'for', words, at: 'competes' }];
  }
  const what =
    partners === '' ? 'it separates into its elements' : `compounds such as ${partners} are preferred`;
  return [{ sign: 'against', words: `In a simple model ${what}, by ${by}.`, at: 'competes' }];
}

/** Only what would happen at the anneal: below, metals are too slow. */
function separation({ explanation, conditions }: AlloyState): Argument[] {
  if (!explanation) return [];
  const { demixing, ordering } = explanation;
  const anneal = conditions.annealTemperature ?? explanation.conditions.annealTemperature ?? 0;
  const found: Argument[] = [];
  const demixes = demixing?.temperature ?? 0;
  if (demixes > anneal) {
    found.push({
      sign: 'open',
      words: `${demixing!.words} The anneal, ${kelvinInWords(anneal)}, lies below${nearlyAs(demixes, anneal)}; on published alloys this has predicted nothing.`,
      at: 'competes',
    });
  }
  if ((ordering?.temperature ?? 0) > anneal && (ordering?.ratioToMelting ?? 0) > 0.8) {
    found.push(
      isLikeliestFcc(explanation)
        ? { sign: 'open', words: `${ordering!.words} But fcc is likelier.`, at: 'competes' }
        : { sign: 'against', words: `${ordering!.words} A weak hint of more phases.`, at: 'competes' },
    );
  }
  return found;
}

/** The temperature again with more digits, where the three of the sentence before would lie at the anneal or below. */
function nearlyAs(temperature: number, anneal: number): string {
  if (Number(temperature.toPrecision(3)) > Math.round(anneal)) return '';
  return ` ${formatNumber(temperature, decimalsBeside(temperature, Math.round(anneal), 0))} K`;
}

/** Whether it is known as fcc, or fcc is what the estimate finds likeliest: the order that is computed is one of bcc. */
function isLikeliestFcc({ nearest, phase }: Explanation): boolean {
  const known = nearest.find((one) => isSame(one) && one.reports.length > 0);
  const [most] = known?.reports ?? [];
  return most ? most.phases.toUpperCase() === 'FCC' : phase.likely?.[0] === 'fcc';
}

/** Rules that expect a phase beside the solution, each with how often it was right where it expected one. */
function secondPhases({ explanation, evidence }: AlloyState): Argument[] {
  const met = evidence?.criteria.filter(
    ({ id, predictsSecondPhase }) => predictsSecondPhase && explanation?.criteria[id] === true,
  );
  return (met ?? []).map(({ name, positiveClass, tp, fp }) => {
    const record =
      tp === null || fp === null
        ? 'not tested on published alloys'
        : `right for ${formatCount(tp)} of the ${formatCount(tp + fp)} published alloys of which it expects this`;
    return { sign: 'against', words: `${name} expects ${positiveClass}: ${record}.`, at: 'criteria' };
  });
}

function rules({ explanation, evidence }: AlloyState): Argument[] {
  const records = evidence?.criteria.filter(({ predicts }) => predicts === 'one solution') ?? [];
  const verdicts = records.map(({ id }) => explanation?.criteria[id] ?? null).filter((one) => one !== null);
  const best = evidence?.phaseEstimate.bestRule;
  if (verdicts.length === 0 || !best) return [];
  const met = verdicts.filter(Boolean).length;
  return [
    {
      sign: 'open',
      words:
        `It meets ${met} of ${verdicts.length} published rules for one phase. That says little: the best of them ` +
        `is right in ${formatNumber(100 * best.balancedAccuracy, 0)} of 100, a coin in 50.`,
      at: 'criteria',
    },
  ];
}

/** From here on a metal creeps and softens at once, as a share of the melting temperature. */
const hot = 0.7;

function service({ values, symbols, elements }: AlloyState): Argument[] {
  const found: Argument[] = [];
  if ((values.homologousTemperature ?? 0) >= 1) {
    found.push({
      sign: 'mind',
      words: 'At the service temperature it would be molten.',
      at: 'quantities',
    });
  } else if ((values.homologousTemperature ?? 0) > hot) {
    found.push({
      sign: 'mind',
      words: `The service temperature is ${formatNumber(100 * values.homologousTemperature!, 0)} % of the melting temperature: it would be soft.`,
      at: 'quantities',
    });
  }
  if ((values.vapourMargin ?? 1) < 0) {
    found.push({
      sign: 'mind',
      words: 'One element boils before another melts: it cannot be melted together in the open.',
      at: 'quantities',
    });
  }
  const hazardous = elements
    .filter(({ symbol, hazards }) => symbols.includes(symbol) && hazards.length > 0)
    .map(({ symbol }) => symbol);
  if (hazardous.length > 0) {
    found.push({
      sign: 'mind',
      words: `Handling ${hazardous.sort().join(', ')} asks for care.`,
      at: 'hazards-head',
    });
  }
  return found;
}

function gaps({ composition, facts, quantities, values }: AlloyState): Argument[] {
  const missing = quantities
    .filter(({ id, needs }) => values[id] === null && !needs.elements.includes('price'))
    .flatMap(({ id }) => missingFor(id, composition, facts));
  const each = [...new Map(missing.map((one) => [`${one.element} ${one.value}`, one])).values()];
  if (each.length === 0) return [];
  return [{ sign: 'open', words: `Not known: ${missingInWords(each)}.`, at: 'quantities' }];
}
