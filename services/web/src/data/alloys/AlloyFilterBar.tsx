import { useNarrow } from '../../frame/useNarrow.ts';
import { SearchField } from '../SearchField.tsx';
import type { AlloyFilters } from './alloyFilters.ts';

/** Labels of phases as publications report them, and as they are read where that is not the same. */
const phases = ['FCC', 'BCC', 'FCC+BCC', 'B2', 'L12', 'HCP', 'Laves', 'Sec.', 'Other'];

const read: Readonly<Record<string, string>> = {
  L12: 'L1₂',
  'Sec.': 'a second phase',
  Other: 'another phase',
};
const optionText = (phase: string) => read[phase] ?? phase;

interface AlloyFilterBarProps {
  filters: AlloyFilters;
  change: (part: Record<string, string>) => void;
}

/** What the list of alloys is narrowed by. */
export function AlloyFilterBar({ filters, change }: AlloyFilterBarProps) {
  const { text, has, without, phase, own } = filters;
  const narrow = useNarrow();
  const fields = (
    <div className="row data-tools">
      <SearchField
        label="Search"
        value={text}
        placeholder="name, source, doi"
        width={18}
        onChange={(next) => change({ text: next })}
      />
      <SearchField
        label="With"
        value={has}
        placeholder="Fe Ni"
        width={10}
        onChange={(next) => change({ has: next })}
      />
      <SearchField
        label="Without"
        value={without}
        placeholder="Co"
        width={10}
        onChange={(next) => change({ without: next })}
      />
      <label className="data-field">
        Phases
        <select value={phase} onChange={(event) => change({ phase: event.target.value })}>
          <option value="">any</option>
          {[...new Set([...phases, phase])].filter(Boolean).map((one) => (
            <option key={one} value={one}>
              {optionText(one)}
            </option>
          ))}
        </select>
      </label>
      <label className="data-field">
        From
        <select value={own} onChange={(event) => change({ own: event.target.value })}>
          <option value="">everywhere</option>
          <option value="no">publications that came with the program</option>
          <option value="yes">what you brought in</option>
        </select>
      </label>
    </div>
  );
  if (!narrow) return fields;
  return (
    <details className="filter-more" open={Object.values(filters).some((one) => one !== '') || undefined}>
      <summary>Filter the alloys</summary>
      {fields}
    </details>
  );
}
