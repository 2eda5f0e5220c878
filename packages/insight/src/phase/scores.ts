/** A yes-or-no question answered by a probability: what was said and what was so. */
export interface Answer {
  probability: number;
  yes: boolean;
}

/**
 * Area under the ROC curve: the chance that a yes was given a higher probability than a no; ties
 * count half. 0.5 is no skill.
 */
export function areaUnderCurve(answers: readonly Answer[]): number {
  return areaUnderCurveOf(answers)([...answers.keys()]);
}

/** The same of answers that are drawn again and again, by their index and each as often as it comes: they are put in order once. */
export function areaUnderCurveOf(answers: readonly Answer[]): (rows: readonly number[]) => number {
  const rising = [...new Set(answers.map(({ probability }) => probability))].sort((a, b) => a - b);
  const steps = new Map(rising.map((probability, step) => [probability, step]));
  const stepOf = answers.map(({ probability }) => steps.get(probability)!);
  const [yes, no] = [new Float64Array(rising.length), new Float64Array(rising.length)];
  return (rows) => {
    yes.fill(0);
    no.fill(0);
    for (const row of rows) (answers[row]!.yes ? yes : no)[stepOf[row]!]! += 1;
    let [pairs, allYes, allNo] = [0, 0, 0];
    for (const step of rising.keys()) {
      pairs += yes[step]! * (allNo + no[step]! / 2);
      allYes += yes[step]!;
      allNo += no[step]!;
    }
    return pairs / (allYes * allNo);
  };
}

/** Mean of −ln p(what was so), nat. */
export function logLoss(answers: readonly Answer[]): number {
  return mean(answers.map(({ probability, yes }) => -Math.log(yes ? probability : 1 - probability)));
}

/** Mean squared error of the probabilities (Brier, Mon. Weather Rev. 78 (1950) 1). */
export function brierScore(answers: readonly Answer[]): number {
  return mean(answers.map(({ probability, yes }) => (probability - (yes ? 1 : 0)) ** 2));
}

/** 1 − Brier score over that of always saying the base rate: 0 is no skill, 1 is perfect. */
export function brierSkill(answers: readonly Answer[]): number {
  const rate = baseRate(answers);
  return 1 - brierScore(answers) / (rate * (1 - rate));
}

/** Share of yes. */
export function baseRate(answers: readonly Answer[]): number {
  return mean(answers.map(({ yes }) => (yes ? 1 : 0)));
}

/** Mean of the shares of yes and of no that are answered right, for a cut at a probability. */
export function balancedAccuracyAt(answers: readonly Answer[], cut: number): number {
  const right = (group: readonly Answer[]) =>
    mean(group.map(({ probability, yes }) => (probability >= cut === yes ? 1 : 0)));
  return (right(answers.filter(({ yes }) => yes)) + right(answers.filter(({ yes }) => !yes))) / 2;
}

/** One bar of a reliability diagram. */
export interface ReliabilityBin {
  from: number;
  to: number;
  count: number;
  /** mean probability said, and share that was so; null without alloys */
  said: number | null;
  happened: number | null;
}

/** What happened where a probability was said, in bins of equal width. */
export function reliability(answers: readonly Answer[], bins = 10): ReliabilityBin[] {
  return Array.from({ length: bins }, (_, bin) => {
    const inside = answers.filter(
      ({ probability }) => Math.min(bins - 1, Math.floor(probability * bins)) === bin,
    );
    return {
      from: bin / bins,
      to: (bin + 1) / bins,
      count: inside.length,
      said: inside.length === 0 ? null : mean(inside.map(({ probability }) => probability)),
      happened: inside.length === 0 ? null : baseRate(inside),
    };
  });
}

/** Expected calibration error: |said − happened|, averaged over the bins by their counts. */
export function calibrationError(answers: readonly Answer[]): number {
  return (
    reliability(answers).reduce(
      (sum, { count, said, happened }) => sum + count * Math.abs((said ?? 0) - (happened ?? 0)),
      0,
    ) / answers.length
  );
}

export function mean(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0) / values.length;
}
