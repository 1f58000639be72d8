import { mishapKinds } from "../../../../record/parts/mishap-kinds.ts";
import { mishapWords } from "../../../../record/words/later-words.ts";
import { KeyHint } from "../../../parts/key-hint.tsx";
import { useShortcut } from "../../../parts/shortcuts.ts";
import { capital } from "../../../words/capital.ts";
import { useMishap } from "./use-mishap.ts";
import { type MishapKind, withKind } from "./with-kind.ts";

const keyOf = (index: number): string => (index < 10 ? String((index + 1) % 10) : "-");

/** What happened: eleven kinds in sight, each with its key and a target for a gloved hand. */
export function KindChooser() {
  const { mishap, readOnly, write } = useMishap("What happened");
  const choose = (kind: MishapKind) => {
    if (kind !== mishap.what) write(withKind(mishap, kind), mishapWords[kind]);
  };
  return (
    <div className="mishap-kinds" role="radiogroup" aria-label="What happened">
      {mishapKinds.map((kind, index) => (
        <label key={kind} className="mishap-kind">
          <input
            type="radio"
            name="mishap-kind"
            checked={mishap.what === kind}
            disabled={readOnly}
            aria-keyshortcuts={keyOf(index)}
            onChange={() => choose(kind)}
          />
          <span>
            {capital(mishapWords[kind])}
            {!readOnly && <KeyHint keys={keyOf(index)} />}
          </span>
          {!readOnly && <KindKey digit={keyOf(index)} kind={kind} choose={choose} />}
        </label>
      ))}
    </div>
  );
}

interface KindKeyOptions {
  readonly digit: string;
  readonly kind: MishapKind;
  readonly choose: (kind: MishapKind) => void;
}

function KindKey({ digit, kind, choose }: KindKeyOptions) {
  useShortcut(digit, "Mishap", `What happened: ${mishapWords[kind]}`, () => choose(kind));
  return null;
}
