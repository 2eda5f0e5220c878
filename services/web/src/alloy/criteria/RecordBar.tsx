/** A share between 0 and 1 with its interval, and the coin's half as a line. Decoration beside the numbers. */
export function RecordBar({
  value,
  interval: [low, high],
}: {
  value: number;
  interval: readonly [number, number];
}) {
  const x = (share: number) => 100 * share;
  return (
    <svg className="record-bar" viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
      <line x1="0" x2="100" y1="5" y2="5" className="record-bar-ground" />
      <line x1={x(low)} x2={x(high)} y1="5" y2="5" className="record-bar-interval" />
      <line x1="50" x2="50" y1="0" y2="10" className="record-bar-coin" />
      <rect x={x(value) - 0.9} y="1" width="1.8" height="8" className="record-bar-value" />
    </svg>
  );
}
