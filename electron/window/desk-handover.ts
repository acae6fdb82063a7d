import { RPCHandler } from '@orpc/server/message-port';
import type { IpcMain, IpcMainEvent, MessagePortMain } from 'electron';
import { desk, deskInterceptors, takeRequestKey } from '../desk/index.ts';
import type { DeskSession } from '../launch/desk-session.ts';
import { tellFaults } from '../launch/tell-faults.ts';
import { channels } from './channels.ts';
import { isTrustedFrame } from './trusted-frame.ts';

/**
 * Lets a page take the desk: after this handshake, calls no longer pass ipcMain, so the sender is
 * checked here or nowhere. A page that reloads shakes hands again, and its old port is closed.
 */
export function handOverDesk(
  ipcMain: Pick<IpcMain, 'on'>,
  { context, gate }: Pick<DeskSession, 'context' | 'gate'>,
): void {
  const handler = new RPCHandler(desk, {
    interceptors: [takeRequestKey],
    clientInterceptors: [tellFaults, gate.pass, ...deskInterceptors],
  });
  const portOf = new Map<number, MessagePortMain>();

  ipcMain.on(channels.desk, (event: IpcMainEvent) => {
    const [port, ...others] = event.ports;
    if (!isTrustedFrame(event.senderFrame) || port === undefined || others.length > 0) {
      for (const unwanted of event.ports) unwanted.close();
      return;
    }
    const page = event.sender.id;
    portOf.get(page)?.close();
    portOf.set(page, port);
    port.on('close', () => {
      if (portOf.get(page) === port) portOf.delete(page);
    });
    handler.upgrade(port, { context });
    // Until now, messages have waited in the port.
    port.start();
  });
}
