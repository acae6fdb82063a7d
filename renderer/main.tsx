import { useEffect, useState } from 'react';
import { createRoot } from 'react-dom/client';
import { desk } from './common/connection/desk.ts';

function About() {
  const [text, setText] = useState('Asking the desk …');
  useEffect(() => {
    desk.office.about({}).then(
      ({ program, version }) => setText(`${program} ${version}`),
      (error: Error) => setText(error.message),
    );
  }, []);
  return <main>{text}</main>;
}

const root = document.getElementById('root');
if (root) createRoot(root).render(<About />);
