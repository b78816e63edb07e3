/**
 * A stand-in for the desktop's own module: it records what was asked of it, in order, and lets a test play the system's part.
 */
import { EventEmitter } from 'node:events';

export type Asked = { what: string; with: unknown[] };
export const asked: Asked[] = [];
const record = (what: string, ...given: unknown[]): void => void asked.push({ what, with: given });
export const askedFor = (what: string): Asked[] => asked.filter((each) => each.what === what);

class App extends EventEmitter {
  isFirst = true;
  setPath = (...given: unknown[]) => record('app.setPath', ...given);
  requestSingleInstanceLock = (): boolean => {
    record('app.requestSingleInstanceLock');
    return this.isFirst;
  };
  whenReady = async (): Promise<void> => record('app.whenReady');
  quit = (): void => {
    record('app.quit');
    this.emit('will-quit');
  };
  exit = (status: number): void => record('app.exit', status);
}
export const app = new App();

export type PageHandler = (request: { url: string; method: string }) => Response;
export const protocol = {
  registerSchemesAsPrivileged: (schemes: unknown) => record('protocol.registerSchemesAsPrivileged', schemes),
  handle: (scheme: string, handler: PageHandler) => record('protocol.handle', scheme, handler),
};

export const session = {
  defaultSession: {
    setPermissionRequestHandler: (handler: unknown) => record('setPermissionRequestHandler', handler),
    setPermissionCheckHandler: (handler: unknown) => record('setPermissionCheckHandler', handler),
    setDevicePermissionHandler: (handler: unknown) => record('setDevicePermissionHandler', handler),
  },
};

export const shell = { openExternal: async (url: string): Promise<void> => record('shell.openExternal', url) };
export const dialog = { showErrorBox: (...given: unknown[]) => record('dialog.showErrorBox', ...given) };
export const nativeTheme = { shouldUseDarkColors: true };
export const Menu = {
  buildFromTemplate: (template: unknown) => template,
  setApplicationMenu: (menu: unknown) => record('Menu.setApplicationMenu', menu),
};

export class MessageChannelMain {
  readonly port1: MessagePort;
  readonly port2: MessagePort;
  constructor() {
    const { port1, port2 } = new MessageChannel();
    this.port1 = port1;
    this.port2 = port2;
  }
}

export type OpenHandler = (details: { url: string }) => { action: string };

export class WebContents extends EventEmitter {
  openHandler: OpenHandler = () => ({ action: 'allow' });
  readonly mainFrame = {
    url: '',
    parent: null as object | null,
    postMessage: (...given: unknown[]) => record('mainFrame.postMessage', ...given),
  };
  setWindowOpenHandler = (handler: OpenHandler): void => {
    this.openHandler = handler;
  };
  getURL = (): string => this.mainFrame.url;
}

export class BrowserWindow extends EventEmitter {
  readonly webContents = new WebContents();
  constructor(options: unknown) {
    super();
    record('new BrowserWindow', options, this);
    app.emit('web-contents-created', {}, this.webContents);
  }
  loadURL = async (url: string): Promise<void> => {
    record('loadURL', url);
    this.webContents.mainFrame.url = url;
    this.webContents.emit('did-finish-load');
    this.emit('ready-to-show');
  };
  isMinimized = (): boolean => true;
  show = () => record('show');
  restore = () => record('restore');
  focus = () => record('focus');
}
