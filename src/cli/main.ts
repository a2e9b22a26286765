#!/usr/bin/env node
import { machineEffects } from "./machine.js";
import { run } from "./run.js";

// `gylebook check | head` closes the pipe early: nobody is left to tell.
process.stdout.on("error", () => process.exit());

process.exitCode = await run(process.argv.slice(2), machineEffects());
