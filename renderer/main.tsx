import './no-eval.ts';
import './look/tokens.css';
import './look/fonts.css';
import './look/base.css';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';

const root = document.getElementById('root');
if (root) createRoot(root).render(<App />);
