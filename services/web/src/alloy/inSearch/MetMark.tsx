/** Whether a limit is met, as a sign and for listeners in words. */
export function MetMark({ met }: { met: boolean }) {
  return (
    <span className={met ? 'met' : 'unmet'}>
      {met ? '✓' : '×'}
      <span className="unseen">{met ? ' met ' : ' not met '}</span>
    </span>
  );
}
