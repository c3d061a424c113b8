//! Putting the app on the home screen and finding a site again, in Spanish.

use crate::install::Install;

pub(super) static INSTALL: Install = Install {
    title: "En la pantalla de inicio",
    why: "Desde allí Winterset se abre como cualquier otra aplicación, con red o sin ella.",
    install: "Añadir a la pantalla de inicio",
    by_hand: "Abra el menú del navegador, o su botón de compartir, y elija «Añadir a pantalla de inicio» o «Instalar».",
    dismiss: "No mostrar esto más",
    find_site: "Buscar un sitio por su nombre",
    no_site: "En este teléfono no hay ningún sitio con ese nombre.",
    found: |count| match count {
        1 => "1 sitio".to_owned(),
        count => format!("{count} sitios"),
    },
    recent_first: "El último que se abrió está primero.",
};
