import type { Form } from '../../kernel/form.ts';
import { FirstDegree } from './firstDegree.ts';
import type { FormBounds } from './formBounds.ts';
import { SecondDegree } from './secondDegree.ts';

/**
 * Prepares the bounds of a form over systems of up to so many elements of a grid whose whole is
 * `total` parts.
 */
export function boundsOfForm(form: Form, total: number, mostElements: number): FormBounds {
  if (form.degree === 2) return new SecondDegree(form, total, mostElements);
  return new FirstDegree(form, total, mostElements);
}
