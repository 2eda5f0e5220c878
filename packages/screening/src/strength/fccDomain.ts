import { atMost, type Expression, linear, share, within } from '../formula/expression.ts';

/** Elements whose alloys the Hall–Petch slope was found on. */
export const cantorElements = ['Co', 'Cr', 'Fe', 'Mn', 'Ni'] as const;
/** Mole fraction of aluminium above which there is no value: it orders and brings B2. */
export const MOST_ALUMINIUM = 0.05;
/** With these there is no value: silicides, carbides, borides, interstitials. */
export const excludedFromFcc = ['Si', 'C', 'B'] as const;

/** The mole fraction of aluminium. */
export const aluminium = linear(share('Al'));

/** A strength of fcc where the composition allows to speak of one, no value elsewhere. */
export function withinFccDomain(strength: Expression): Expression {
  return within(
    atMost(aluminium, MOST_ALUMINIUM),
    within(atMost(linear(share(...excludedFromFcc)), 0), strength),
  );
}
