import { parentPort, workerData } from "node:worker_threads";
import { ledgerAsStood, type PastLedger } from "../../ledger/ledger-as-stood.ts";

/** The thread beside the server: works out one past ledger and ends. */
parentPort?.postMessage(ledgerAsStood(workerData as PastLedger));
