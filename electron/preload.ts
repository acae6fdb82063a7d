import { contextBridge, ipcRenderer } from 'electron';
import type { DesktopBridge } from '../shared/desktop-bridge.ts';
import { channels } from './window/channels.ts';

// The page can't reach ipcRenderer, and a port can't pass the bridge: so the page posts the port to
// its own window, and this passes it on. The main process checks the sender once more.
window.addEventListener('message', (event) => {
  const fromOwnPage = event.source === window && event.origin === window.location.origin;
  if (!fromOwnPage || event.data !== channels.desk || event.ports.length !== 1) return;
  ipcRenderer.postMessage(channels.desk, null, [...event.ports]);
});

const bridge: DesktopBridge = {
  savePaper: (fileName, bytes) => ipcRenderer.invoke(channels.savePaper, fileName, bytes),
  printPaper: (bytes) => ipcRenderer.invoke(channels.printPaper, bytes),
};

contextBridge.exposeInMainWorld('tappetDesktop', bridge);
