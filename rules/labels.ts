/** How a row is named in a finding: as printed, in short. */
import type { Row } from '../grammar/tree.ts';

/** "Row 5", "Dec rnd"; null for a row without a label. */
export function labelOf(row: Row): string | null {
  const { label } = row;
  if (label === null) return null;
  const unit = label.unit === 'round' ? 'Rnd' : 'Row';
  if (label.next !== null) return `Next ${unit.toLowerCase()}`;
  const name = label.name === null ? unit : `${label.name.charAt(0).toUpperCase()}${label.name.slice(1)} ${unit.toLowerCase()}`;
  const number = label.numbers[0];
  return number === undefined ? name : `${name} ${number}`;
}
