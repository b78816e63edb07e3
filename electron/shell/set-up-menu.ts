/**
 * The window's menu: what the system's own keys for editing, zooming and closing need, and nothing else.
 */
import { Menu, type MenuItemConstructorOptions } from 'electron';

export function setUpMenu(platform: NodeJS.Platform): void {
  const view: MenuItemConstructorOptions = {
    label: 'View',
    submenu: [{ role: 'zoomIn' }, { role: 'zoomOut' }, { role: 'resetZoom' }, { type: 'separator' }, { role: 'togglefullscreen' }],
  };
  const start: MenuItemConstructorOptions[] = platform === 'darwin' ? [{ role: 'appMenu' }] : [];
  Menu.setApplicationMenu(Menu.buildFromTemplate([...start, { role: 'editMenu' }, view, { role: 'windowMenu' }]));
}
