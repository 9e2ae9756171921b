// Before the first paint: the theme that was chosen. After loading: the worker that makes the app independent of the network.
(() => {
  let theme = matchMedia('(prefers-color-scheme: dark)').matches ? 'night' : 'paper';
  try { theme = JSON.parse(localStorage.getItem('foramen.settings') ?? '{}').theme?.toLowerCase() ?? theme; } catch { /* no settings kept */ }
  document.documentElement.dataset.theme = theme;
  if ('serviceWorker' in navigator) {
    addEventListener('load', () => navigator.serviceWorker.register('service-worker.js', { updateViaCache: 'none' }).catch(() => { }));
  }
})();
