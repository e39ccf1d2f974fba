import { setFlagsFromString } from 'node:v8';

/** The first version of Node whose engine has a compiler between the quick one and the thorough one. */
const HAS_MIDDLE_COMPILER = 22;

/**
 * A run ends after some seconds, and half of its time went into compiling code thoroughly that was then hardly used.
 * Quickly compiled code from the first call, and ten times as many calls before the thorough compiler sets in, save a
 * fifth of the time of every command. Threads inherit it. Engines with a compiler in between gain nothing by it.
 */
if (Number.parseInt(process.versions.node, 10) < HAS_MIDDLE_COMPILER) {
  setFlagsFromString('--always-sparkplug');
  setFlagsFromString('--interrupt-budget=600000');
}
