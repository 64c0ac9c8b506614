import '@fontsource/b612/latin-400.css'
import '@fontsource/b612/latin-700.css'
import './theme/tokens.css'
import './theme/base.css'
import './sheet/sheet.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { Desk } from '../worker/desk.ts'
import { hireBench } from '../worker/hire.ts'
import { App } from './app.tsx'
import { Hatches } from './drawing/hatches.tsx'

const root = document.getElementById('root')
if (root === null) throw new Error('index.html has no element with the id "root"')

const desk = new Desk(hireBench)
// It loads while the page is drawn, and is ready when the first numbers are.
desk.warm()

createRoot(root).render(
  <StrictMode>
    <App desk={desk} />
    <Hatches />
  </StrictMode>,
)
