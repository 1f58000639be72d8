import { Fragment } from "react";
import { Link } from "wouter";
import { type IrrigationTold, irrigationsTold } from "../../../../../ledger/irrigation-told.ts";
import { activatedWords } from "../../../../../record/words/visit-words.ts";
import { Cautions } from "../../../../parts/cautions.tsx";
import { refusalInWords, sentenceInWords } from "../../../../words/value-words.ts";
import { useCaseNow } from "../../case-now.ts";
import { ClashTold } from "./clash-told.tsx";
import { quantity } from "./dose-in-words.ts";
import { type IrrigantInOrder, irrigationInOrder } from "./irrigation-read.ts";
import { irrigantInWords, needleInWords } from "./read-irrigant.ts";
import { useVisit } from "./use-visit.ts";

/** The irrigants in their order, what met that must not, totals and the needle. */
export function IrrigationSection() {
  const { visitId, visit } = useVisit("Irrigation");
  const { ledger } = useCaseNow();
  const told = irrigationsTold(ledger, visitId);
  const order = irrigationInOrder(visit.irrigation, ledger, visitId);
  const shared = sharedCautions(told);
  if (visit.irrigation.length === 0) return <p className="quiet">No irrigant is noted.</p>;
  return (
    <div className="sum-told">
      <Sequence order={order} />
      {told.map((one) =>
        one.output === undefined ? (
          <p key={one.entryId} className="look">
            ▲ {one.canal === undefined ? "" : `${one.canal}: `}What met is not looked at. {refusalInWords(one.why)}
          </p>
        ) : (
          <OfCanal key={one.entryId} output={one.output} entryId={one.entryId} canal={one.canal} shared={shared} />
        ),
      )}
      <Cautions topic="irrigation" cautions={shared} />
      <p>
        <Link href="/methods/irrigation">How this is judged</Link>
      </p>
    </div>
  );
}

/** One solution after the other; between two that met stands what happened, by shape and in words. */
const Sequence = ({ order }: { readonly order: readonly IrrigantInOrder[] }) => (
  <ol className="sequence" aria-label="Irrigants in their order">
    {order.map(({ row, index, met }) => (
      <Fragment key={index}>
        {met.map(({ clash, entryId, canals }) => (
          <li key={entryId + clash.what} className="sequence-clash">
            <details>
              <summary>
                ▲ {clash.first} and {clash.second} met{canals.length > 0 ? ` in ${canals.join(", ")}` : ""}
              </summary>
              <ClashTold clash={clash} />
              <a href={`#${entryId}`}>From the ledger</a>
            </details>
          </li>
        ))}
        <li>
          <strong>{irrigantInWords(row)}</strong>
          <span>
            {[
              `${row.volumeMl} ml`,
              `${row.minutes} min`,
              ...(row.atMin === undefined ? [] : [`from minute ${row.atMin}`]),
              ...(row.canal === undefined ? [] : [row.canal]),
              ...(row.activated === "no" ? [] : [activatedWords[row.activated]]),
            ].join(", ")}
          </span>
          {row.needle && <span className="quiet">needle {needleInWords(row.needle)}</span>}
          {row.confirmed && <span className="quiet">asked, confirmed by {row.confirmed.by}</span>}
        </li>
      </Fragment>
    ))}
  </ol>
);

interface OfCanalOptions {
  readonly output: IrrigationTold;
  readonly entryId: string;
  readonly canal: string | undefined;
  /** Cautions that stand once for all canals. */
  readonly shared: readonly string[];
}

function OfCanal({ output, entryId, canal, shared }: OfCanalOptions) {
  const { totals, protocol = [] } = output;
  const name = canal === undefined ? "In all" : `In ${canal}, with what all canals were given`;
  return (
    <div className="sum-of">
      <h3>{name}</h3>
      <ul className="sum-totals">
        {totals.map(({ solution, volumeMl, minutes, activatedMinutes }) => (
          <li key={solution}>
            {solution}{" "}
            <a className="sum-number" href={`#${entryId}`}>
              {quantity(volumeMl, "ml")}, {quantity(minutes, "min")}
            </a>
            {activatedMinutes > 0 && (
              <span className="quiet">, {quantity(activatedMinutes, "min")} of it activated</span>
            )}
          </li>
        ))}
      </ul>
      {protocol.length > 0 && (
        <ul className="sum-totals" aria-label="Against the clinic's protocol">
          {protocol.map(({ solution, what, wanted, found, stands, met }) => (
            <li key={solution + what} data-met={met}>
              {met ? "●" : "▲"} {solution}: {wantedWords[what](wanted)}; {quantity(found, unitOf[what])}, {stands}
            </li>
          ))}
        </ul>
      )}
      <Cautions topic="irrigation" cautions={ownCautions(output).filter((one) => !shared.includes(one))} />
    </div>
  );
}

/** What is to be kept in mind beside the clashes, which stand in the sequence. */
const ownCautions = ({ cautions }: IrrigationTold): readonly string[] =>
  cautions.filter((one) => !/^Steps \d+ and \d+: /.test(one)).map(sentenceInWords);

/** Cautions that are the same for every canal that was looked at. */
function sharedCautions(told: ReturnType<typeof irrigationsTold>): readonly string[] {
  const [first = [], ...others] = told.flatMap(({ output }) => (output === undefined ? [] : [ownCautions(output)]));
  return first.filter((caution) => others.every((one) => one.includes(caution)));
}

const unitOf = { minutesAtLeast: "min", minutesAtMost: "min", volumeMlAtLeast: "ml" } as const;
const wantedWords = {
  minutesAtLeast: (value: number) => `at least ${value} min are wanted`,
  minutesAtMost: (value: number) => `at most ${value} min are wanted`,
  volumeMlAtLeast: (value: number) => `at least ${value} ml are wanted`,
} as const;
