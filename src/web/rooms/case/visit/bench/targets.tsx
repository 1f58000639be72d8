import { type ReactNode, useId } from "react";
import { KeyHint } from "../../../../parts/key-hint.tsx";

/** One answer that can be pressed. */
export interface Target<Value extends string> {
  readonly value: Value;
  readonly says: ReactNode;
  /** The key that presses it, inside its dialog. */
  readonly hint?: string;
}

interface TargetsOptions<Value extends string> {
  readonly label: string;
  readonly targets: readonly Target<Value>[];
  readonly value: Value | undefined;
  readonly choose: (value: Value) => void;
  /** Laid in as many columns; as they fit where absent. */
  readonly columns?: number;
}

/** One of a few answers, each as large as a gloved hand needs; none is chosen before the person chooses. */
export function Targets<Value extends string>({ label, targets, value, choose, columns }: TargetsOptions<Value>) {
  const name = useId();
  return (
    <fieldset className="targets">
      <legend>{label}</legend>
      <div data-columns={columns}>
        {targets.map((target) => (
          <label key={target.value} className="target">
            <input
              type="radio"
              name={name}
              checked={value === target.value}
              aria-keyshortcuts={target.hint}
              onChange={() => choose(target.value)}
            />
            <span>
              {target.says}
              {target.hint !== undefined && <KeyHint keys={target.hint} />}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

/** What the keys of targets press. */
export const keysOf = <Value extends string>(
  targets: readonly Target<Value>[],
  choose: (value: Value) => void,
): Readonly<Record<string, () => void>> =>
  Object.fromEntries(targets.map(({ hint = "", value }) => [hint, () => choose(value)]));
