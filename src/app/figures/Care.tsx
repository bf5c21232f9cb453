import { Fragment } from 'react';
import { CAUTIONS, type CautionId, CHOSEN_IS_LISTED, isDalbergia } from '../../trade/cautions.ts';
import { useApp } from '../store/useApp.ts';

/** What can hurt at the bench, kept calm and out of the way until it is opened. */
export function Care() {
  const listed = useApp(({ history }) => isDalbergia(String(history.present.timber.name)));
  return (
    <details className="panel care">
      <summary>
        <h2>Care</h2>
        <span className="essence">dust, listed woods, machines, strings</span>
      </summary>
      <dl>
        {(Object.keys(CAUTIONS) as CautionId[]).map((id) => (
          <Fragment key={id}>
            <dt>{CAUTIONS[id].title}</dt>
            <dd>
              {id === 'listed' && listed && <strong>{CHOSEN_IS_LISTED} </strong>}
              <Latin text={CAUTIONS[id].text} />
            </dd>
          </Fragment>
        ))}
      </dl>
    </details>
  );
}

/** Names of trees stand in italics. */
function Latin({ text }: { text: string }) {
  return text
    .split(/(Dalbergia|Guibourtia|D\. nigra)/)
    .map((part, i) => (i % 2 === 1 ? <i key={part}>{part}</i> : part));
}
