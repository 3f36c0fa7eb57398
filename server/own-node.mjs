import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

// Runs after npm has installed everything. Plain JavaScript, because the Node that comes to run it may be too old for more.

/**
 * Whether the scripts of this project run on the Node that it brings along, and a sentence on it.
 * @param {string} running version of the Node that runs scripts here
 * @param {string} brought version that the project brings along, as package.json has it: "^24.21.0"
 * @param {string} [agent] what npm says of itself: "npm/11.19.1 node/v20.20.2 linux x64"
 * @returns {{ good: boolean, sentence: string }}
 */
export function ownNode(running, brought, agent = "") {
  const major = (/** @type {string} */ version) => Number(/\d+/.exec(version)?.[0]);
  if (major(running) < major(brought))
    return {
      good: false,
      sentence: `Scripts would run on Node ${running}, and need Node ${major(brought)}, which npm should have put into node_modules. Run npm rebuild node; if it was left out (--omit=dev), npm ci.`,
    };
  const npms = / node\/(v[\d.]+)/.exec(agent)?.[1];
  const yours = npms && npms !== running ? ` Yours, ${npms}, runs npm and is left as it is.` : "";
  return {
    good: true,
    sentence: `Installed. Everything here runs on Node ${running}, which is in node_modules.${yours}`,
  };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { devDependencies } = JSON.parse(
    readFileSync(new URL("../package.json", import.meta.url), "utf8"),
  );
  const { good, sentence } = ownNode(
    process.version,
    devDependencies.node,
    process.env.npm_config_user_agent,
  );
  console.log(sentence);
  process.exitCode = good ? 0 : 1;
}
