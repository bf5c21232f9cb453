import { sameWood, WOODS } from '../../trade/woods.ts';
import { useApp } from '../store/useApp.ts';

/** What can hurt at the bench, kept calm and out of the way until it is opened. */
export function Care() {
  const listed = useApp(
    ({ history }) => WOODS.find((wood) => sameWood(wood, history.present.timber))?.dalbergia ?? false,
  );
  return (
    <details className="panel care">
      <summary>
        <h2>Care</h2>
        <span className="essence">dust, listed woods, machines, strings</span>
      </summary>
      <dl>
        <dt>Dust</dt>
        <dd>
          Hardwood dust harms the lungs. Limits over eight hours: EU 2 mg/m³ (Directive 2017/2398), UK 3, US
          OSHA 15 in all and 5 respirable, NIOSH advises 1. Collect it at the tool and wear a mask.
        </dd>
        <dt>Skin and lungs</dt>
        <dd>Rosewoods, ebony, padauk and cocobolo can make you allergic (Chudnoff 1984).</dd>
        <dt>Listed woods</dt>
        <dd>
          {listed && <strong>The timber chosen is a Dalbergia. </strong>}
          <i>Dalbergia</i> and some <i>Guibourtia</i> stand in CITES Appendix II, <i>D. nigra</i> in Appendix
          I. Finished parts of instruments are exempt in Appendix II (note 15), blanks not clearly. Check the
          current Appendices.
        </dd>
        <dt>Machines</dt>
        <dd>
          Hold a small part in a fixture, never by hand, on a drill press or router. Keep screws and clamps
          out of the cutter’s path, and the cutter within its rated speed.
        </dd>
        <dt>Strings</dt>
        <dd>
          A steel string pulls as much as a bucket of water weighs, a set several times that. Wear eye
          protection, and slacken strings before cutting them.
        </dd>
        <dt>First of all</dt>
        <dd>Local rules, the machine’s manual and a qualified person come before anything said here.</dd>
      </dl>
    </details>
  );
}
