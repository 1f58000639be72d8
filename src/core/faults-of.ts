import type { z } from "zod";
import type { Fault } from "./refusal.ts";

type Issue = z.core.$ZodIssue;

/**
 * The faults of an input, one for each thing that a schema objects to: the path, what was found, what is accepted.
 * Takes the schema's error and the raw input it was given.
 */
export function faultsOf(error: z.ZodError, raw: unknown): Fault[] {
  return error.issues.flatMap((issue) => faultsOfIssue(issue, raw, []));
}

function faultsOfIssue(issue: Issue, raw: unknown, before: readonly PropertyKey[]): Fault[] {
  const path = [...before, ...issue.path];
  if (issue.code === "unrecognized_keys")
    return issue.keys.map((key) => ({ path: pathText([...path, key]), says: "is not a field of this input" }));
  if (issue.code === "invalid_union") return faultsOfUnion(issue, raw, path);
  return [{ path: pathText(path), says: `${foundText(at(raw, path))} ${acceptedText(issue)}` }];
}

/**
 * Of a union's branches, the faults of the one that the writer most likely meant: one whose faults lie inside what was written before
 * one that wants another kind of thing, and then the one with the fewest.
 */
function faultsOfUnion(
  issue: Extract<Issue, { code: "invalid_union" }>,
  raw: unknown,
  path: readonly PropertyKey[],
): Fault[] {
  const branches = issue.errors.map((issues) => issues.flatMap((one) => faultsOfIssue(one, raw, path)));
  const faulty = branches.filter((faults) => faults.length > 0).sort((a, b) => a.length - b.length);
  const inside = faulty.find((faults) => faults.every((fault) => fault.path !== pathText(path)));
  const closest = inside ?? faulty[0];
  if (closest !== undefined) return closest;
  return [{ path: pathText(path), says: `${foundText(at(raw, path))} is none of the accepted forms` }];
}

/** A path as people write it: `views[1].horizontalAngleDeg`. */
function pathText(path: readonly PropertyKey[]): string {
  return path.reduce<string>((text, step) => {
    if (typeof step === "number") return `${text}[${step}]`;
    return text === "" ? String(step) : `${text}.${String(step)}`;
  }, "");
}

function at(raw: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, step) => (typeof value === "object" && value !== null ? Reflect.get(value, step) : undefined),
    raw,
  );
}

function foundText(value: unknown): string {
  if (value === undefined) return "nothing";
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}

function acceptedText(issue: Issue): string {
  switch (issue.code) {
    case "too_small":
      return `is below what is accepted: ${issue.origin} of ${issue.inclusive === false ? "more than" : "at least"} ${issue.minimum}`;
    case "too_big":
      return `is above what is accepted: ${issue.origin} of ${issue.inclusive === false ? "less than" : "at most"} ${issue.maximum}`;
    case "invalid_type":
      return `stands where a ${issue.expected} is needed`;
    case "invalid_value":
      return issue.message.startsWith("is ") ? issue.message : `is none of ${issue.values.map(String).join(", ")}`;
    case "invalid_format":
      return acceptedFormat(issue);
    case "custom":
      return issue.message;
    default:
      return `is not accepted: ${issue.message}`;
  }
}

/** A form that says itself what it is not ("is not a pseudonym: ..") is heard, as a list does; the usual ones are named here. */
function acceptedFormat({ format, message }: Extract<Issue, { code: "invalid_format" }>): string {
  if (format === "date") return "is not a day: YYYY-MM-DD";
  return message.startsWith("is ") ? message : `is not accepted: ${message}`;
}
