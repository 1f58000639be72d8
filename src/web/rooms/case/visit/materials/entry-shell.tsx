import { type KeyboardEvent, type ReactNode, useEffect, useRef } from "react";
import { Button } from "../../../../parts/button.tsx";
import { Dialog } from "../../../../parts/dialog.tsx";
import { inTextField } from "../../../../parts/shortcuts.ts";
import { EntryFeet } from "../../entry/entry-feet.tsx";
import { type Offer, Offers, offerOfDigit } from "./offers.tsx";
import "../../entry/quick-entry.css";
import "./entry-shell.css";

/** What was entered last of this kind in this visit, to be taken once more. */
interface Again {
  readonly says: string;
  readonly take: () => void;
}

interface EntryShellOptions {
  readonly title: string;
  readonly close: () => void;
  readonly label: string;
  readonly offers: readonly Offer[];
  readonly chosen: string | undefined;
  readonly choose: (id: string) => void;
  readonly again?: Again | undefined;
  /** What further single keys do, outside of fields. */
  readonly keys?: Readonly<Record<string, () => void>>;
  /** Records, or says what is missing. */
  readonly enter: () => void;
  /** The words of the button. */
  readonly records: string;
  /** It is asked before it is recorded. */
  readonly isAsked?: boolean;
  /** Counts how often something was missing, so that the focus goes there each time. */
  readonly missed: number;
  readonly children: ReactNode;
}

/** An entry at the chair: what it is by one digit, how much, and Enter. The focus goes on by itself to what comes next. */
export function EntryShell(options: EntryShellOptions) {
  const { title, close, label, offers, chosen, choose, again, keys = {}, enter, records, missed, children } = options;
  const page = useRef<HTMLDivElement>(null);
  const goesOn = useRef(false);
  const choosing = (id: string, on: boolean) => {
    goesOn.current = on;
    choose(id);
    if (on && id === chosen) focusFirst(page.current);
  };
  const repeat = () => {
    goesOn.current = true;
    again?.take();
    if (chosen !== undefined) focusFirst(page.current);
  };
  useEffect(() => {
    if (chosen !== undefined && goesOn.current) focusFirst(page.current);
    goesOn.current = false;
  }, [chosen]);
  useEffect(() => {
    if (missed > 0) focusMissing(page.current);
  }, [missed]);
  const press = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    const act = actOf(event, { enter, repeat: again && repeat, keys, choose: choosing, offers });
    if (act === undefined) return;
    event.preventDefault();
    act();
  };
  return (
    <Dialog title={title} close={close} wide>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the keys are those of the fields inside */}
      <div className="entry material-entry" ref={page} onKeyDown={press}>
        <Offers {...{ label, offers, chosen }} choose={choosing} />
        {again && (
          <Button hint="r" onClick={repeat}>
            Again: {again.says}
          </Button>
        )}
        {chosen !== undefined && children}
        <EntryFeet record={chosen === undefined ? undefined : enter} close={close} isLook={options.isAsked}>
          {records}
        </EntryFeet>
      </div>
    </Dialog>
  );
}

interface Acts {
  readonly enter: () => void;
  readonly repeat: (() => void) | undefined;
  readonly keys: Readonly<Record<string, () => void>>;
  readonly choose: (id: string, goesOn: boolean) => void;
  readonly offers: readonly Offer[];
}

/** What a key does in an entry; nothing where it belongs to the field or the button that it is pressed in. */
function actOf(
  { key, target }: KeyboardEvent,
  { enter, repeat, keys, choose, offers }: Acts,
): (() => void) | undefined {
  if (key === "Enter") return isPressed(target) ? undefined : enter;
  if (inTextField(target)) return undefined;
  const offered = offerOfDigit(key, offers);
  if (offered !== undefined) return () => choose(offered, true);
  return key.toLowerCase() === "r" ? repeat : keys[key.toLowerCase()];
}

/** Enter on a button, a link or a list that drops down is theirs. */
const isPressed = (target: EventTarget | null): boolean =>
  target instanceof HTMLButtonElement || target instanceof HTMLAnchorElement || target instanceof HTMLSelectElement;

function focusFirst(page: HTMLElement | null): void {
  const field = page?.querySelector<HTMLElement>("[data-entry-first]");
  field?.focus();
  if (field instanceof HTMLInputElement && field.type !== "radio") field.select();
}

function focusMissing(page: HTMLElement | null): void {
  page?.querySelector<HTMLElement>("[aria-invalid=true]")?.focus();
}
