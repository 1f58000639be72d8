import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";

/**
 * One text for one value, whatever the order of its fields: keys sorted by code unit, no blanks, absent fields left out.
 * Takes a value that JSON can hold; a number that JSON can't hold is refused by throwing TypeError.
 * @source A. Rundgren, B. Jordan, S. Erdtman, JSON Canonicalization Scheme, RFC 8785, 2020 (from memory)
 */
export function canonicalJson(value: unknown): string {
  if (value === null || typeof value === "boolean" || typeof value === "string") return JSON.stringify(value);
  if (typeof value === "number") return numberText(value);
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(",")}]`;
  if (typeof value === "object") return objectText(value);
  throw new TypeError(`JSON can't hold a ${typeof value}`);
}

function numberText(value: number): string {
  if (!Number.isFinite(value)) throw new TypeError(`JSON can't hold ${value}`);
  return JSON.stringify(value);
}

function objectText(value: object): string {
  const fields = Object.entries(value).filter(([, field]) => field !== undefined);
  fields.sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${fields.map(([key, field]) => `${JSON.stringify(key)}:${canonicalJson(field)}`).join(",")}}`;
}

/** SHA-256 of a value's canonical text, 64 hexadecimal digits. */
export const hashOf = (value: unknown): string => bytesToHex(sha256(utf8ToBytes(canonicalJson(value))));
