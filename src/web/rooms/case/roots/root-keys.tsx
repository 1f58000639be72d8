import { Button } from "../../../parts/button.tsx";
import { KeyHint } from "../../../parts/key-hint.tsx";
import { inTextField, useShortcut } from "../../../parts/shortcuts.ts";
import { countActs, type RootAct, rootActs } from "./root-acts.ts";
import type { RootSteps } from "./use-root-steps.ts";

interface RootKeysOptions {
  readonly steps: RootSteps;
  /** Leads back to the chosen level after a key has acted. */
  readonly back: () => void;
  /** Takes the usual form of the tooth again. */
  readonly usual: () => void;
  /** Leads to the field with the root's name. */
  readonly rename: () => void;
}

/** Everything that can be done with the drawn roots, by button and by key. */
export function RootKeys({ steps, back, usual, rename }: RootKeysOptions) {
  const buttons = (on: RootAct["on"]) =>
    rootActs
      .filter((one) => one.on === on)
      .map(({ keys, label, step }) => (
        <Button key={keys} hint={keys} onClick={() => steps.act(step(steps.hand))}>
          {label}
        </Button>
      ));
  const keyOf = ({ keys, does, step }: RootAct) => {
    const run = () => {
      steps.act(step(steps.hand));
      back();
    };
    return <EditorKey key={keys} {...{ keys, does, run }} />;
  };
  return (
    <div className="root-keys">
      <fieldset className="root-keys-line">
        <legend className="unseen">At the chosen level</legend>
        {buttons("level")}
        <span className="quiet root-keys-more">
          <KeyHint keys="1" /> to <KeyHint keys="6" /> canals at once
        </span>
      </fieldset>
      <fieldset className="root-keys-line">
        <legend className="unseen">With the root</legend>
        {buttons("root")}
        <Button hint="n" onClick={rename}>
          Name it
        </Button>
        <Button hint="u" onClick={usual}>
          Usual form again
        </Button>
      </fieldset>
      {[...rootActs, ...countActs].map(keyOf)}
      <EditorKey keys="n" does="The chosen root's name" run={rename} />
      <EditorKey keys="u" does="Start again from the usual form" run={usual} />
      {backspaceActs.map(keyOf)}
    </div>
  );
}

const room = "Roots and canals";

/** Backspace does what Delete does. */
const backspaceActs = rootActs
  .filter(({ keys }) => keys === "Delete")
  .map((one): RootAct => ({ ...one, keys: "Backspace" }));

/** A key that acts while nothing else on the page has the keyboard. */
function EditorKey({ keys, does, run }: { readonly keys: string; readonly does: string; readonly run: () => void }) {
  useShortcut(keys, room, does, ({ target }) => {
    if (inTextField(target) || !isFree(target)) return false;
    run();
    return true;
  });
  return null;
}

/** Whether the keyboard stands in the editor, or nowhere. */
const isFree = (target: EventTarget | null): boolean =>
  !(target instanceof Element) || target === document.body || target.closest(".canal-editor, #moment-title") !== null;
