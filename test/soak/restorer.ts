import { restore } from "../../src/store/backup.ts";

/** Restores a backup into a home and kills itself at the step that is named. */
const [file, home, at] = process.argv.slice(2);
if (file !== undefined && home !== undefined)
  await restore(file, home, {
    moveAside: true,
    reached: (step) => {
      if (step === at) process.kill(process.pid, "SIGKILL");
    },
  });
