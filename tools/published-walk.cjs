// Walks a published Field at each address: it opens, keeps a camera, and after one visit opens without a network, also at a page inside. Ends with 1 if anything is amiss.
const { chromium } = require(process.env.DRIVER);

const flags = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'];

async function walk(browser, address) {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  context.setDefaultTimeout(120_000);
  const page = await context.newPage();
  const wrong = [];
  // A host of files has no Home: that it says so is no error.
  const known = text => /api\/home|demo\/outing/.test(text);
  page.on('console', message => { if (message.type() === 'error' && !known(message.location().url)) { wrong.push(message.text()); } });
  page.on('pageerror', error => wrong.push(String(error)));
  page.on('request', request => { if (!request.url().startsWith(address) && !/^(blob|data):/.test(request.url())) { wrong.push(`asked elsewhere: ${request.url()}`); } });
  page.on('response', response => { if (response.status() >= 400 && !known(response.url())) { wrong.push(`${response.status()} ${response.url()}`); } });

  await page.goto(address);
  await page.locator('h1').waitFor();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await context.setOffline(true);
  await page.reload();
  await page.locator('h1').waitFor();
  await page.getByRole('link', { name: 'Bench', exact: true }).click();
  await page.getByRole('heading', { name: 'Bench', level: 1 }).waitFor();
  await page.goto(new URL('bench/camera', address).href);
  await page.locator('h1').waitFor();
  if (await page.locator('#blazor-error-ui').isVisible()) { wrong.push('the error bar is shown'); }
  await context.close();
  if (wrong.length > 0) { throw new Error(`${address}: ${wrong.join('; ')}`); }
  console.log(`${address}: opens, and opens without a network from the second visit on.`);
}

(async () => {
  const browser = await chromium.launch({ executablePath: process.env.CHROMIUM, headless: true, args: flags });
  try {
    for (const address of process.argv.slice(2)) {
      await walk(browser, address);
    }
  } finally {
    await browser.close();
  }
})().catch(error => { console.error(error.message); process.exit(1); });
