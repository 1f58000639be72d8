import { useState } from "react";
import { Button, Menu, MenuItem, MenuTrigger, Popover } from "react-aria-components";
import { KeyHint } from "../../../parts/key-hint.tsx";
import { useShortcut } from "../../../parts/shortcuts.ts";
import "../../../parts/button.css";
import "./add-moment.css";
import { type Addable, addable } from "./addable.ts";
import { titles } from "./spine-moments.ts";

/** The menu of moments that can be added. */
export function AddMoment({ add }: { readonly add: (kind: Addable) => void }) {
  const [open, setOpen] = useState(false);
  useShortcut("a", "Case", "Add a moment", () => setOpen(true));
  return (
    <div className="spine-add">
      <MenuTrigger isOpen={open} onOpenChange={setOpen}>
        <Button className="button button-bare">
          Add a moment
          <KeyHint keys="a" />
        </Button>
        <Popover className="add-moment" placement="top start">
          <Menu className="add-moment-list" aria-label="Add a moment">
            {addable.map((kind) => (
              <MenuItem key={kind} id={kind} className="add-moment-item" onAction={() => add(kind)}>
                {titles[kind]}
              </MenuItem>
            ))}
          </Menu>
        </Popover>
      </MenuTrigger>
    </div>
  );
}
