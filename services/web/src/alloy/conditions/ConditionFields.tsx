import { type ConditionName, conditionNames, conditions as known } from '@tiegel/screening';
import '../alloy.css';
import { useKeptText } from '../../frame/useKeptText.ts';
import { formatNumber } from '../../numbers/formatNumber.ts';
import { entryText, parseNumber } from '../../numbers/parseNumber.ts';
import { isAllowed } from './conditionState.ts';

interface ConditionFieldsProps {
  conditions: Record<string, number>;
  onChange: (conditions: Record<string, number>) => void;
}

/** The temperatures, rate and grain size at which the alloy is looked at; an empty field has the default. */
export function ConditionFields({ conditions, onChange }: ConditionFieldsProps) {
  const take = (name: ConditionName, value: number | null) => {
    const { [name]: _, ...others } = conditions;
    onChange(value === null ? others : { ...others, [name]: value });
  };
  return (
    <fieldset className="conditions">
      <legend className="unseen">Conditions</legend>
      {conditionNames.map((name) => (
        <ConditionField
          key={name}
          name={name}
          value={conditions[name]}
          onTake={(value) => take(name, value)}
        />
      ))}
    </fieldset>
  );
}

interface ConditionFieldProps {
  name: ConditionName;
  value: number | undefined;
  onTake: (value: number | null) => void;
}

function ConditionField({ name, value, onTake }: ConditionFieldProps) {
  const { label, unit, default: usual, range } = known[name];
  const [text, setText, settled] = useKeptText(`${window.location.pathname} ${name}`, entryText(value));
  const read = parseNumber(text);
  const fault =
    'unclear' in read
      ? read.unclear
      : read.value !== null && !isAllowed(name, read.value)
        ? `Write a number from ${entryText(range.min)} to ${entryText(range.max)} ${unit}.`
        : null;
  const id = `condition-${name}`;
  const onType = (typed: string) => {
    const now = parseNumber(typed);
    if ('value' in now && (now.value === null || isAllowed(name, now.value))) {
      settled(typed);
      onTake(now.value);
    } else setText(typed);
  };
  const kelvin = unit === 'K' ? (value ?? usual) : null;
  return (
    <span className="condition">
      <label htmlFor={id}>{label}</label>
      <span className="condition-entry">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          size={8}
          value={text}
          placeholder={usual === null ? 'none' : entryText(usual)}
          aria-invalid={fault !== null}
          aria-describedby={`${id}-note`}
          onChange={(event) => onType(event.target.value)}
        />{' '}
        {unit}
      </span>
      <span id={`${id}-note`} className={fault === null ? 'quiet small' : 'fault'}>
        {fault ?? (kelvin === null ? '' : `${formatNumber(kelvin - 273.15, 0)} °C`)}
      </span>
    </span>
  );
}
