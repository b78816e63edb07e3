import './look/tokens.css';
import './look/fonts.css';
import './look/base.css';
import { createRoot } from 'react-dom/client';

const root = document.getElementById('root');
if (root) createRoot(root).render(<main>Kitbound</main>);
