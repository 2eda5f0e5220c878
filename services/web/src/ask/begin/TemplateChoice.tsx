import { useMutation } from '@tanstack/react-query';
import { FaultList } from '../../frame/FaultList.tsx';
import type { Draft } from '../draft/draft.ts';
import { draftOf } from '../draft/draftOf.ts';
import { type Template, templates } from './templates.ts';

/** Invented tasks whose specification fills the form. */
export function TemplateChoice({ onFill }: { onFill: (draft: Draft) => void }) {
  const fill = useMutation({
    mutationFn: ({ specification }: Template) => specification(),
    onSuccess: (specification) => onFill(draftOf(specification)),
  });
  return (
    <div className="begin-way">
      <h3>From a template</h3>
      <ul className="begin-templates">
        {templates.map((template) => (
          <li key={template.name}>
            <button type="button" onClick={() => fill.mutate(template)}>
              {template.name}
            </button>{' '}
            <span className="small">{template.story}</span>
          </li>
        ))}
      </ul>
      <p className="small quiet">The tasks are invented.</p>
      <FaultList error={fill.error} what="The form is as it was; load the page again and try once more." />
    </div>
  );
}
