/**
 * The host's own runtime script in a page without a spreadsheet: dist/functions.html is opened, the script that it asks
 * of the network comes from the development package, and what it would send to a cell is caught at the native bridge.
 */
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { JSDOM, ResourceLoader, VirtualConsole } from 'jsdom';

/** One answer as it goes over the bridge: its call, whether it is a value, the value or the sentence, the error's number. */
export type SentAnswer = readonly [call: number, good: boolean, value: unknown, error?: number | readonly number[]];
/** The numbers that the runtime gives its errors. */
export const sentCode = { plainError: 2, notAvailable: 1, invalidValue: 7 } as const;

export interface OfficeRuntime {
  /** Calls functions in one batch, as the host does: an omitted argument is null; answers in the order of the calls. */
  answers(calls: readonly (readonly [id: string, args: readonly unknown[]])[]): Promise<readonly SentAnswer[]>;
  readonly problems: readonly string[];
  close(): void;
}

const packaged = 'node_modules/@microsoft/office-js/dist/custom-functions-runtime.debug.js';
const files = new Map([
  ['https://appsforoffice.microsoft.com/lib/1/hosted/custom-functions-runtime.js', packaged],
  ['https://localhost:3000/functions.js', 'dist/functions.js'],
]);

class LocalLoader extends ResourceLoader {
  constructor(private readonly offline: boolean) {
    super();
  }

  override fetch(url: string): ReturnType<ResourceLoader['fetch']> {
    const file = this.offline && !url.startsWith('https://localhost') ? undefined : files.get(url);
    if (file === undefined) return null;
    const loaded = Promise.resolve(readFileSync(resolve(file)));
    return Object.assign(loaded, { abort: () => undefined });
  }
}

interface Bridge {
  sendMessageToHost(text: string): void;
  onMessageFromHost?(text: string): void;
}

const invocation = { category: 1, type: 1000, errorsAllowed: 4 } as const;
const message = { request: 1, response: 2, event: 3 } as const;

export async function officeRuntime({ offline = false } = {}): Promise<OfficeRuntime> {
  const problems: string[] = [];
  let receive: (answers: readonly SentAnswer[]) => void = () => undefined;
  const bridge: Bridge = {
    sendMessageToHost(text) {
      const sent = JSON.parse(text);
      for (const action of sent.message.body.Actions) {
        if (action.Name === 'SetInvocationArrayResults') receive(action.ArgumentInfo.Arguments[0]);
      }
      const response = {
        id: sent.id,
        type: message.response,
        message: { statusCode: 200, headers: {}, body: { Results: [] } },
      };
      setTimeout(() => bridge.onMessageFromHost?.(JSON.stringify(response)), 0);
    },
  };
  const virtualConsole = new VirtualConsole();
  virtualConsole.on('jsdomError', (error) => problems.push(String(error)));
  const page = new JSDOM(readFileSync(resolve('dist/functions.html')), {
    url: 'https://localhost:3000/functions.html',
    runScripts: 'dangerously',
    resources: new LocalLoader(offline),
    virtualConsole,
    beforeParse: (window) => Object.assign(window, { _richApiNativeBridge: bridge }),
  });
  await new Promise((loaded) => page.window.addEventListener('load', loaded));

  return {
    problems,
    close: () => page.window.close(),
    answers: (calls) =>
      new Promise((done) => {
        receive = (answers) => done([...answers].sort((a, b) => a[0] - b[0]));
        const entries = calls.map(([id, args], i) => {
          const call = [i, id, args, null, invocation.errorsAllowed];
          return [invocation.category, invocation.type, '', call, i];
        });
        bridge.onMessageFromHost?.(JSON.stringify({ type: message.event, message: { entries } }));
      }),
  };
}
