import { EventEmitter } from 'node:events';
import { MessageChannel } from 'node:worker_threads';

/** As much of a preventable event as the program looks at. */
export function preventable(url = '') {
  const event = {
    url,
    prevented: false,
    preventDefault() {
      event.prevented = true;
    },
  };
  return event;
}

type Frame = { url: string; parent: unknown };
export const ownFrame: Frame = { url: 'tappet://desk/bench', parent: null };

/**
 * A page that posts a port, with the two ends of a real channel. The end that goes to the main
 * process gets the manners of Electron's MessagePortMain, which Node's port nearly has.
 */
export function handshake(senderFrame: Frame | null, ports = 1, pageId = 1) {
  const channels = Array.from({ length: ports }, () => new MessageChannel());
  const closed: boolean[] = channels.map(() => false);
  const given = channels.map(({ port2 }, index) => ({
    on(name: string, listener: (event: { data: unknown }) => void) {
      // Electron's ports wait for start(); Node's begin with the first listener for messages.
      port2.on(name, (data: unknown) => listener({ data }));
      return this;
    },
    postMessage: (message: unknown) => port2.postMessage(message),
    start: () => port2.start(),
    close() {
      closed[index] = true;
      port2.close();
    },
  }));
  return {
    event: { senderFrame, sender: { id: pageId }, ports: given },
    // Of one kind with the DOM's, save for its types.
    pageEnds: channels.map(({ port1 }) => port1 as unknown as MessagePort),
    closed,
    end() {
      for (const { port1 } of channels) port1.close();
    },
  };
}

/** Records what was handled and answers as if a page had asked. */
export class StandInIpcMain extends EventEmitter {
  readonly handlers = new Map<string, (...args: unknown[]) => unknown>();

  handle(channel: string, handler: (...args: never[]) => unknown): void {
    if (this.handlers.has(channel)) throw new Error(`${channel} is handled already`);
    this.handlers.set(channel, handler as (...args: unknown[]) => unknown);
  }

  async invoke(channel: string, senderFrame: Frame | null, ...args: unknown[]): Promise<unknown> {
    return this.handlers.get(channel)?.({ senderFrame, sender: {} }, ...args);
  }
}
