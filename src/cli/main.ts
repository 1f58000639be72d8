import { Command, CommanderError, InvalidArgumentError } from "commander";
import { Refusal } from "../core/refusal.ts";
import { refusalOutcome } from "../core/refusal-outcome.ts";
import { hearClosedPipe } from "./hear-closed-pipe.ts";

/** Each command's room is entered only when it is called for, so that a short one starts at once. */
const program = new Command("canalog")
  .description("The bench where the account of a treated tooth is built while the treatment happens.")
  .exitOverride()
  .showHelpAfterError();

const portOf = (text: string): number => {
  const port = Number(text);
  if (!Number.isInteger(port) || port < 1 || port > 65_535)
    throw new InvalidArgumentError("a port is a whole number from 1 to 65535");
  return port;
};

program
  .command("serve")
  .description("serve the bench on this machine alone and print its address")
  .option("--port <number>", "the port to begin with", portOf, 4270)
  .action(async (options) => (await import("./serve-command.ts")).serveCommand(options));
program
  .command("compute")
  .description("compute one topic: JSON from standard input, JSON to standard output")
  .argument("[topic]")
  .option("--list", "the topics, one line each")
  .option("--schema", "JSON Schema of the topic's input and output")
  .action(async (topic: string | undefined, options: { list?: boolean; schema?: boolean }) => {
    const { compute } = await import("./compute.ts");
    process.exitCode = await compute({ topic, ...options }, process);
  });
program
  .command("import")
  .description("take a film into a case, or a case file into the record")
  .argument("<file>", "a DICOM, PNG, JPEG, TIFF or BMP film, or a case file (.json)")
  .option("--case <id>", "the case that the film belongs to, as the end of its address says: /case/ID")
  .option("--taken-on <day>", "the day on which the film was taken, YYYY-MM-DD")
  .option("--purpose <purpose>", "diagnostic, angled, workingLength, masterCone, final, recall or other", "diagnostic")
  .action(async (file, options) => (await import("./import-command.ts")).importCommand(file, options));
program
  .command("export")
  .description("write a document of a case")
  .argument("<case>", "its id, as the end of its address says: /case/ID")
  .requiredOption("--as <document>", "deck, handout, consent, piece or letter")
  .option("--to <file>", "where to write it; default: its own name, here")
  .action(async (caseId, options) => (await import("./export-command.ts")).exportCommand(caseId, options));
program
  .command("due")
  .description("write what is due in all cases as a calendar file, without detail of a patient")
  .option("--to <file>", "where to write it", "canalog-due.ics")
  .option("--demo", "with the invented cases of the demo")
  .action(async (options) => (await import("./due-command.ts")).dueCommand(options));
program
  .command("backup")
  .description("write the whole data folder to one file, verified")
  .argument("<file>")
  .action(async (file) => (await import("./backup-commands.ts")).backupCommand(file));
program
  .command("restore")
  .description("bring a data folder back from a backup, verified first")
  .argument("<file>")
  .option("--move-aside", "a data folder that is there is renamed, never overwritten")
  .action(async (file, options) => (await import("./backup-commands.ts")).restoreCommand(file, options));
program
  .command("check")
  .description("verify chain, states, facts, films and documents; name kept films that nothing uses")
  .option("--remove-unused", "take away kept films that no change ever named")
  .action(async (options) => (await import("./check-command.ts")).checkCommand(options));
program
  .command("where")
  .description("print the data folder")
  .action(async () => (await import("./where-command.ts")).whereCommand());

hearClosedPipe(process.stdout, process.stderr);
try {
  await program.parseAsync();
} catch (thrown) {
  process.exitCode = exitCodeOf(thrown);
}

/** 0 for help, 2 for a call that can't be understood or an input at fault, 3 for the world's refusal, 1 for a bug. */
function exitCodeOf(thrown: unknown): number {
  if (thrown instanceof CommanderError) return thrown.exitCode === 0 ? 0 : 2;
  if (!(thrown instanceof Refusal)) {
    console.error(thrown);
    return 1;
  }
  console.error(thrown.message);
  for (const { path, says } of thrown.faults) if (!thrown.message.includes(says)) console.error(`${path}: ${says}`);
  return refusalOutcome[thrown.code].exitCode;
}
