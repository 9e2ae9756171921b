using Foramen.Home;

return await HomeHost.RunAsync(args);
