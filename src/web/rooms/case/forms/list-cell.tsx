import type { BodyPath } from "../../../record/body-path.ts";
import { TypedCell } from "./typed-cell.tsx";

/** A list of short texts in one line, parted by semicolons. */
export const ListCell = ({ at, label }: { readonly at: BodyPath; readonly label: string }) => (
  <TypedCell
    at={at}
    label={label}
    inWords={(value) => (Array.isArray(value) ? value.join("; ") : "")}
    read={(text) => ({
      value: text
        .split(";")
        .map((item) => item.trim())
        .filter((item) => item !== ""),
    })}
  />
);
