import { Dialog } from "./dialog.tsx";
import { KeyHint } from "./key-hint.tsx";
import "./shortcut-sheet.css";
import { type Shortcut, shortcutsNow } from "./shortcuts.ts";

/** Lists every key that works where the person stands. */
export function ShortcutSheet({ close }: { readonly close: () => void }) {
  const shortcuts = shortcutsNow();
  const rooms = [...new Set(shortcuts.map(({ room }) => room))];
  return (
    <Dialog title="Keys" close={close}>
      {rooms.map((room) => (
        <section key={room} className="shortcut-room">
          <h3>{room}</h3>
          <dl>
            {shortcuts
              .filter((shortcut) => shortcut.room === room)
              .map((shortcut) => (
                <Line key={shortcut.keys} {...shortcut} />
              ))}
          </dl>
        </section>
      ))}
      <p className="quiet">
        Tab and Shift Tab walk through every field, arrow keys from cell to cell in a table and along the spine; Alt
        with an arrow moves a row. Escape closes what is open above the page.
      </p>
    </Dialog>
  );
}

const Line = ({ keys, does }: Shortcut) => (
  <div>
    <dt>
      <KeyHint keys={keys} />
      <span className="unseen">{keys}</span>
    </dt>
    <dd>{does}</dd>
  </div>
);
