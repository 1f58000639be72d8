import { useId } from "react";
import { mishapWords } from "../../../../record/words/later-words.ts";
import { Button } from "../../../parts/button.tsx";
import { Within } from "../../../parts/fields/editing.tsx";
import { capital } from "../../../words/capital.ts";
import { detailFields } from "./kind-details.tsx";
import { SeparatedRecord } from "./separated-record.tsx";
import { useMishap } from "./use-mishap.ts";
import { type DetailName, detailOf, keptDetails, kindOf, withDetails, withKind } from "./with-kind.ts";

/** What the kind that happened asks, and what was said of another kind before. */
export function KindRecord() {
  const { mishap, readOnly, write } = useMishap("What is asked of it");
  const detail = detailOf(mishap.what);
  const heading = useId();
  return (
    <section className="form-part mishap-record" aria-labelledby={heading}>
      <h2 id={heading}>{capital(mishapWords[mishap.what])}: what to note</h2>
      {detail === undefined && <p className="quiet">This kind asks for the account alone.</p>}
      {detail !== undefined && mishap[detail] === undefined && !readOnly && (
        <div className="mishap-line">
          <Button onClick={() => write(withDetails(mishap), "begun")}>Begin its record</Button>
        </div>
      )}
      {detail !== undefined && mishap[detail] === undefined && readOnly && <p className="quiet">none recorded</p>}
      {detail !== undefined && mishap[detail] !== undefined && <Details detail={detail} />}
      <Kept />
    </section>
  );
}

function Details({ detail }: { readonly detail: DetailName }) {
  if (detail === "separated") return <SeparatedRecord />;
  const Fields = detailFields[detail];
  return (
    <div className="fields">
      <Within at={detail}>
        <Fields />
      </Within>
    </div>
  );
}

/** Said of another kind before; nothing of it is lost. */
function Kept() {
  const { mishap, readOnly, write } = useMishap("What happened");
  const kept = keptDetails(mishap);
  if (kept.length === 0) return null;
  return (
    <p className="quiet mishap-kept">
      Said before of another kind, and kept:{" "}
      {kept.map((detail) => {
        const kind = kindOf(detail);
        return readOnly ? (
          <span key={detail}>{mishapWords[kind]} </span>
        ) : (
          <Button key={detail} weight="bare" onClick={() => write(withKind(mishap, kind), mishapWords[kind])}>
            {mishapWords[kind]}
          </Button>
        );
      })}
    </p>
  );
}
