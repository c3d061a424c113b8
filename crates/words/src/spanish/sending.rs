//! Sending and receiving, in Spanish.

use crate::sending::Sending;
use crate::units::signed;

pub(super) static SENDING: Sending = Sending {
    show_code: "Mostrar el código QR",
    hide_code: "Ocultar el código QR",
    code: |name| format!("Código QR del enlace a {name}"),
    code_note: "Apunte a él la cámara del otro teléfono. El código contiene el sistema entero.",
    code_too_long: |length, most| {
        let (length, most) = (signed(&length.to_string()), signed(&most.to_string()));
        format!(
            "Este enlace es demasiado largo para un código QR que un teléfono pueda leer: {length} caracteres, y caben {most}. Copie el enlace o guarde un archivo."
        )
    },
    save_file: "Guardar como archivo",
    file_note: "El archivo contiene lo mismo que el enlace. Ábralo en la pantalla de sitios.",
    open_file: "Abrir el archivo de un sistema",
    open_file_note: "Un archivo que se guardó con «Guardar como archivo». Nada se guarda hasta que usted lo diga.",
    file_unreadable: "Este archivo no se pudo leer. Elíjalo de nuevo.",
    file_too_large: "Este archivo contiene más que un sistema. No se abrió.",
    file_holds_nothing: "Este archivo no contiene ningún sistema. Elija uno que se guardó con «Guardar como archivo».",
    differences: "En qué difieren",
    differences_note: |name| {
        format!("Frente a {name}, que ya está en ese sitio. Conserve o tome cada respuesta.")
    },
    same: "Es igual al sistema de este nombre en ese sitio. No hay nada que combinar.",
    here: "Aquí",
    arrived: "Recibido",
    keep: "Conservar",
    take: "Tomar",
    keep_or_take: |question| format!("Conservar o tomar: {question}"),
    merge: "Combinar",
    save_apart: "Guardar aparte",
    no_answer: "sin respuesta",
};
