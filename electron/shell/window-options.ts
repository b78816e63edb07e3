/**
 * How the window is made. Pure, so that a test can hold every option.
 */
import type { BrowserWindowConstructorOptions } from 'electron';

/**
 * @param preload absolute path of the built preload
 * @param dark whether the system is dark now; the ground colour shows before the page does
 */
export function windowOptions(preload: string, dark: boolean): BrowserWindowConstructorOptions {
  return {
    width: 1280,
    height: 800,
    minWidth: 900,
    minHeight: 600,
    show: false,
    title: 'Kitbound',
    backgroundColor: dark ? '#181613' : '#f5f1e8',
    webPreferences: {
      preload,
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      webviewTag: false,
      navigateOnDragDrop: false,
      spellcheck: false,
      safeDialogs: true,
    },
  };
}
