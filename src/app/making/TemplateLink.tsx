import type { TemplateId } from '../../making/step.ts';
import { useAppStore } from '../store/useApp.ts';

/** What a step works from, and the id of the sheet that it is on. */
const TEMPLATES: Readonly<Record<TemplateId, readonly [words: string, sheet: string]>> = {
  outline: ['outline to glue on', 'outline'],
  drilling: ['drilling template', 'drilling'],
  elevation: ['front elevation', 'front'],
  saddle: ['saddle template', 'saddle'],
  'underside-gauge': ['underside gauge', 'gauges'],
  'crown-gauge': ['crown gauge', 'gauges'],
};

/** Leads to the sheet with a step's template. */
export function TemplateLink({ template }: { template: TemplateId }) {
  const store = useAppStore();
  const [words, sheet] = TEMPLATES[template];
  return (
    <button type="button" className="link" onClick={() => store.setSession({ middle: 'sheets', sheet })}>
      Sheet: {words}
    </button>
  );
}
