import { askedInShort, type DifficultyTold, groupWords, type HardFact } from "../../../../ledger/difficulty-told.ts";
import { sentenceInWords } from "../../../words/value-words.ts";
import "./difficulty.css";
import { SourceMark } from "./source-mark.tsx";

/** What makes the tooth harder, in four groups, each fact with its threshold; what nobody recorded stands beside it. */
export const DifficultyList = ({ told }: { readonly told: DifficultyTold }) => (
  <div className="difficulty">
    {groupsOf(told).map(({ group, facts, within, asked }) => (
      <section key={group} aria-label={groupWords[group]}>
        <h3>{groupWords[group]}</h3>
        {facts.length === 0 && <p className="quiet">Nothing that was recorded.</p>}
        <ul className="difficulty-facts">
          {facts.map((fact) => (
            <Fact key={`${fact.id} ${fact.canal ?? ""}`} fact={fact} />
          ))}
        </ul>
        {within.length > 0 && (
          <details>
            <summary>{within.length} recorded within the threshold</summary>
            <ul className="difficulty-facts">
              {within.map((fact) => (
                <Fact key={`${fact.id} ${fact.canal ?? ""}`} fact={fact} />
              ))}
            </ul>
          </details>
        )}
        {asked.length > 0 && <p className="difficulty-asked">○ Not recorded: {askedInShort(asked).join("; ")}.</p>}
      </section>
    ))}
  </div>
);

const groupsOf = ({ facts, within, asked }: DifficultyTold) =>
  (["reach", "shape", "seal", "keep"] as const).map((group) => ({
    group,
    facts: facts.filter((one) => one.group === group),
    within: within.filter((one) => one.group === group),
    asked: asked.filter((one) => one.group === group),
  }));

const Fact = ({ fact }: { readonly fact: HardFact }) => (
  <li>
    {sentenceInWords(fact.says)}
    {fact.sure === false && <span className="quiet"> (the interval reaches to the other side)</span>}{" "}
    <SourceMark {...fact.threshold} />
    <span className="quiet plan-note">{sentenceInWords(fact.because)}</span>
    {fact.otherThresholds?.map(({ says, ...from }) => (
      <span key={says} className="quiet plan-note">
        {sentenceInWords(says)} <SourceMark {...from} />
      </span>
    ))}
  </li>
);
