// Opens pages in a real browser and proves what no parser can: nothing is fetched, nothing is complained of,
// nothing runs out of a narrow phone, it prints, and people who cannot see or point can use it, by light and by dark.
//
//   node check.mjs FOLDER REPORT.html...     pictures and the PDF go into FOLDER; CHROMIUM names another browser
import assert from 'node:assert/strict';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { basename, dirname, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';

const [folder, ...reports] = process.argv.slice(2);
assert.ok(folder && reports.length > 0, 'node check.mjs FOLDER REPORT.html...');
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const executablePath = process.env.CHROMIUM ?? '/usr/bin/chromium';
const args = ['--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run',
  '--disable-background-networking', '--disable-component-update', '--disable-sync'];
const widths = [360, 1100, 1600];
mkdirSync(folder, { recursive: true });

async function checked(name, path, colorScheme, width) {
  const profile = mkdtempSync(join(tmpdir(), 'longnight-browser-'));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath, args, colorScheme, viewport: { width, height: 900 }, bypassCSP: true,
  });
  try {
    const tab = await context.newPage();
    const faults = [];
    tab.on('console', (message) => faults.push(`console: ${message.text()}`));
    tab.on('pageerror', (fault) => faults.push(`page: ${fault}`));
    tab.on('request', (request) => {
      if (request.url() !== path && !request.url().startsWith('data:')) {
        faults.push(`request: ${request.url()}`);
      }
    });
    await tab.goto(path, { waitUntil: 'load' });
    const pictures = await tab.$$eval('img', (all) => all.filter((one) => one.naturalWidth === 0).length);
    if (pictures > 0) {
      faults.push(`${pictures} pictures are not drawn`);
    }
    const over = await tab.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    if (over > 0) {
      faults.push(`scrolls sideways by ${over} px`);
    }
    await tab.screenshot({ path: join(folder, `${name}.png`), fullPage: true });
    if (colorScheme === 'light' && width === 1100) {
      const pdf = await tab.pdf({ format: 'A4', printBackground: true });
      writeFileSync(join(folder, `${name}.pdf`), pdf);
      if (!pdf.subarray(0, 5).equals(Buffer.from('%PDF-')) || pdf.length < 20_000) {
        faults.push(`prints to ${pdf.length} bytes that are no page`);
      }
    }
    await tab.evaluate(axe);
    const { violations, passes } = await tab.evaluate(() => globalThis.axe.run());
    if (passes.length === 0) {
      faults.push('nothing was looked at for access');
    }
    violations.filter((one) => ['serious', 'critical'].includes(one.impact))
      .forEach((one) => faults.push(`access: ${one.id}: ${one.help}: ${one.nodes.map((n) => n.target).join(', ')}`));
    const minor = violations.filter((one) => !['serious', 'critical'].includes(one.impact)).map((one) => one.id);
    return { faults, minor };
  } finally {
    await context.close();
    rmSync(profile, { recursive: true, force: true });
  }
}

let bad = 0;
for (const report of reports) for (const colours of ['light', 'dark']) {
  const kind = basename(dirname(resolve(report)));
  for (const width of widths) {
    const { faults, minor } = await checked(`${kind}-${colours}-${width}`, pathToFileURL(resolve(report)).href, colours, width);
    console.log(`${kind} ${colours} ${width} px: ${faults.length === 0 ? 'fine' : faults.join('\n  ')}`
      + (minor.length > 0 ? ` (lesser remarks: ${minor.join(', ')})` : ''));
    bad += faults.length;
  }
}

// The check itself is checked: a page with every fault must be found out.
const broken = join(folder, 'broken.html');
writeFileSync(broken, '<!DOCTYPE html><html><title>broken</title><body><img src="https://example.invalid/a.png">'
  + '<div style="width:2000px">wide</div><p style="color:#ccc;background:#fff">pale</p></body></html>');
const { faults } = await checked('broken', pathToFileURL(resolve(broken)).href, 'light', 360);
for (const kind of ['console', 'request', 'scrolls', 'access', 'not drawn']) {
  if (!faults.some((fault) => fault.includes(kind))) {
    console.log(`a broken page was not found out: ${kind}`);
    bad += 1;
  }
}
process.exitCode = bad === 0 ? 0 : 1;
