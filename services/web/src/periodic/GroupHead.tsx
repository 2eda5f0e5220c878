import type { CSSProperties } from 'react';

interface GroupHeadProps {
  /** 1 to 18 */
  group: number;
  /** its elements that can be chosen */
  symbols: readonly string[];
  /** what a click does, in a word: 'picks' */
  does: string;
  reachable: boolean;
}

/** The number over a group: a click marks all of its elements that can be chosen. */
export function GroupHead({ group, symbols, does, reachable }: GroupHeadProps) {
  const words =
    symbols.length === 0
      ? `Group ${group}: none of its elements can be chosen`
      : `Group ${group}, ${symbols.join(' ')}: ${does} all`;
  return (
    <div className="place place-group" style={{ '--column': group } as CSSProperties}>
      <button
        type="button"
        className="group-head"
        data-group={group}
        aria-label={words}
        aria-disabled={symbols.length === 0 || undefined}
        title={words}
        tabIndex={reachable ? 0 : -1}
      >
        {group}
      </button>
    </div>
  );
}
