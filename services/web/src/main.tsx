import { QueryClientProvider } from '@tanstack/react-query';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import './styles/tokens.css';
import './styles/ground.css';
import './styles/parts.css';
import './styles/print.css';
import './styles/forced.css';
import { App } from './App.tsx';
import { makeQueryClient } from './server/queries.ts';

createRoot(document.getElementById('page')!).render(
  <StrictMode>
    <QueryClientProvider client={makeQueryClient()}>
      <App />
    </QueryClientProvider>
  </StrictMode>,
);
