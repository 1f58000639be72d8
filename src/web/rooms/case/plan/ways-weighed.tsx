import { useState } from "react";
import type { PlanTold } from "../../../../ledger/plan-told.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import type { BodyOf } from "../../../../record/parts.ts";
import { wayChosen } from "../../../../record/way-chosen.ts";
import { wayWords } from "../../../../record/words/case-words.ts";
import { Cautions } from "../../../parts/cautions.tsx";
import { useField } from "../../../parts/fields/editing.tsx";
import { countOf } from "../../../parts/figures-in-words.ts";
import { useShortcut } from "../../../parts/shortcuts.ts";
import { sentenceInWords } from "../../../words/value-words.ts";
import { EntryDialog } from "../ledger/entry-dialog.tsx";
import "./plan.css";
import { Reasons } from "./way-facts.tsx";
import { WaySection } from "./way-section.tsx";
import { type EntriesOfChoice, type WayShown, waysShown, withChoice, withWeighed } from "./ways-shown.ts";
import { WaysTable } from "./ways-table.tsx";

interface WaysWeighedOptions {
  readonly caseId: string;
  readonly told: PlanTold;
  readonly entry: LedgerEntry;
  /** What a choice made now is made on. */
  readonly stands: EntriesOfChoice;
}

/** The ways of this tooth: side by side, then each by itself; those that do not fit are folded with their reason. */
export function WaysWeighed({ caseId, told, entry, stands }: WaysWeighedOptions) {
  const choice = useField("", "Choice");
  const plan = choice.value as BodyOf<"plan">;
  const chosen = wayChosen(plan);
  const [opened, setOpened] = useState<readonly string[]>(chosen === undefined ? [] : [chosen]);
  const [source, setSource] = useState(false);
  const { open, waiting, unfit } = waysShown(told);
  const toGo = [...open, ...waiting];
  const write = (body: BodyOf<"plan">, says: string) => choice.write(body, says, "now");
  const choose = (way: WayShown) => write(withChoice(plan, way.way, stands), wayWords[way.way]);
  const turn = (way: string) =>
    setOpened(opened.includes(way) ? opened.filter((one) => one !== way) : [...opened, way]);
  const sectionOf = (way: WayShown) => (
    <WaySection
      key={way.way}
      {...{ way }}
      isChosen={way.way === chosen}
      isOpen={opened.includes(way.way)}
      turn={() => turn(way.way)}
      choose={choice.readOnly ? undefined : () => choose(way)}
      weigh={choice.readOnly ? undefined : () => write(withWeighed(plan, way.way), `${wayWords[way.way]} weighed`)}
      showEntry={() => setSource(true)}
    />
  );
  return (
    <>
      <section className="form-part">
        <h2>Ways side by side</h2>
        <WaysTable
          ways={toGo}
          chosen={chosen}
          named={plan.risksNamed}
          choose={choice.readOnly ? undefined : choose}
          showEntry={() => setSource(true)}
        />
        {!choice.readOnly && toGo.map((way) => <ChoiceKey key={way.way} way={way} choose={() => choose(way)} />)}
      </section>
      <Asked told={told} />
      <section className="form-part">
        <h2>Each way by itself</h2>
        <div className="ways">{toGo.map(sectionOf)}</div>
      </section>
      {unfit.length > 0 && (
        <details className="form-part plan-unfit" open={unfit.some(({ way }) => way === chosen)}>
          <summary>{countOf(unfit.length, "way does", "ways do")} not fit this tooth</summary>
          <dl className="plan-unfit-list">
            {unfit.map(({ way, why }) => (
              <div key={way} data-chosen={way === chosen}>
                <dt>
                  {sentenceInWords(wayWords[way])}
                  {way === chosen && <strong className="way-chosen"> ✓ chosen</strong>}
                </dt>
                <dd>
                  <Reasons of={why} />
                </dd>
              </div>
            ))}
          </dl>
        </details>
      )}
      <Cautions topic="plan" cautions={told.cautions} />
      {source && <EntryDialog caseId={caseId} entryId={entry.id} close={() => setSource(false)} />}
    </>
  );
}

/** The digit of a way, while the page is open. */
function ChoiceKey({ way, choose }: { readonly way: WayShown; readonly choose: () => void }) {
  useShortcut(way.key ?? `choose ${way.way}`, "Plan", `Choose ${wayWords[way.way]}`, choose);
  return null;
}

/** What is not recorded and would change where a way stands; what could only call for a risk is folded. */
function Asked({ told: { ask } }: { readonly told: PlanTold }) {
  if (ask.length === 0) return null;
  const others = ask.filter(({ ways }) => ways.length === 0);
  return (
    <section className="form-part">
      <h2>What would settle it</h2>
      <AskedLines ask={ask.filter(({ ways }) => ways.length > 0)} />
      {others.length > 0 && (
        <details className="plan-more">
          <summary>{others.length} more that could call for a risk or move an outcome</summary>
          <AskedLines ask={others} />
        </details>
      )}
    </section>
  );
}

const AskedLines = ({ ask }: Pick<PlanTold, "ask">) => (
  <ul className="plan-lines">
    {ask.map(({ fact, says, ways }) => (
      <li key={fact}>
        <span className="plan-standing">○ not recorded</span>
        <span>
          {sentenceInWords(says)}
          {ways.length > 0 && <span className="quiet"> ({ways.map((way) => wayWords[way]).join(", ")})</span>}
        </span>
      </li>
    ))}
  </ul>
);
