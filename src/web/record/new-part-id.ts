import type { Editable } from "./draft-book.ts";

const letters = "abcdefghjkmnpqrstuvwxyz23456789";

/** A fresh id for a part or an item of the cabinet: its kind and eight letters by chance, as `visit-k3m8qz4t`. */
export function newPartId(kind: Editable["kind"]): string {
  const chance = crypto.getRandomValues(new Uint8Array(8));
  const tail = [...chance].map((byte) => letters[byte % letters.length]).join("");
  return `${kind.replace(/[A-Z]/g, (capital) => `-${capital.toLowerCase()}`)}-${tail}`;
}
