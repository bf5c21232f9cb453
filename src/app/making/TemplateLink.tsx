import { type TemplateId, templateTitles } from '../../sheets/templates/templateTitles.ts';
import { useAppStore } from '../store/useApp.ts';

/** Leads to the sheet with a step's template. */
export function TemplateLink({ template }: { template: TemplateId }) {
  const store = useAppStore();
  return (
    <button
      type="button"
      className="link"
      onClick={() => store.setSession({ middle: 'sheets', sheet: template })}
    >
      {templateTitles[template]}
    </button>
  );
}
