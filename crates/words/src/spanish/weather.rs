//! Weather files in Spanish: what stands round them, and what is wrong with one.

use winterset_calc::weather::epw::{Column, EpwError};

use crate::refused::cut;
use crate::units::signed;
use crate::weather::WeatherLabels;

pub(super) static LABELS: WeatherLabels = WeatherLabels {
    head: "Horas de invierno",
    note: "Un archivo climático en formato EPW dice cuántas horas del año hace cuánto frío. Se lee en este teléfono, y solo se guardan las horas contadas. Sin él se usa un año habitual en torno a la mínima del sitio.",
    choose: "Elegir un archivo climático",
    choose_another: "Elegir otro archivo",
    reading: "Leyendo el archivo.",
    cancel: "Cancelar",
    counted: |place, low| {
        let place = if place.is_empty() {
            "un lugar sin nombre"
        } else {
            place
        };
        format!(
            "Horas de {place}. Su mínima de diseño es {low}: el 99,6 % de las horas son más cálidas."
        )
    },
    use_low: |low, systems| match systems {
        1 => format!("Usar {low} como mínima del sitio en su sistema"),
        systems => format!("Usar {low} como mínima del sitio en los {systems} sistemas"),
    },
    use_low_question: "Esto reemplaza la mínima del sitio que se introdujo allí. Una noche fría todavía puede bajar de la mínima de diseño.",
    low_used: "Todos los sistemas de aquí la tienen como mínima del sitio.",
    offer: |low| format!("Usar {low}, la mínima de diseño del archivo climático de este sitio"),
    remove: "Eliminar las horas de invierno",
    remove_question: "¿Eliminar las horas contadas? Se usa el año habitual hasta que se elija otro archivo.",
    unreadable: "El navegador no pudo leer este archivo. Elíjalo de nuevo, o elija otro.",
    not_a_year: |hours| {
        format!("Este archivo abarca {hours}. Elija uno que abarque un año entero.")
    },
    methods_note: |place| {
        let place = if place.is_empty() {
            "este sitio"
        } else {
            place
        };
        format!(
            "En el año del archivo climático de {place}, con la misma carga todo el año. Las horas en que la baja presión para el compresor no consumen energía ni dan frío."
        )
    },
};

/// What is wrong with a weather file, and what would be right.
pub(super) fn error(error: &EpwError) -> String {
    match error {
        EpwError::NotALocation { .. } => {
            "Este no es un archivo EPW: su primera línea no empieza con LOCATION. Elija un archivo cuyo nombre termine en .epw.".to_owned()
        }
        EpwError::NoDataPeriods { .. } => {
            "La cabecera de este archivo no termina en una línea que empiece con DATA PERIODS. Elija otro archivo EPW.".to_owned()
        }
        EpwError::TooFewColumns {
            line,
            found,
            needed,
        } => format!(
            "La línea {line} de este archivo termina tras {found} de {needed} columnas. Puede que esté cortado: elija uno entero."
        ),
        EpwError::NotANumber {
            line,
            column,
            found,
        } => format!(
            "La línea {line} de este archivo trae «{}» como {}. Elija un archivo con un número allí.",
            cut(found),
            name(*column)
        ),
        EpwError::OutOfRange {
            line,
            column,
            found,
            low,
            high,
        } => format!(
            "La línea {line} de este archivo trae {} como {}, fuera del rango de {} a {}. Elija otro archivo.",
            number(*found),
            name(*column),
            number(*low),
            number(*high)
        ),
        EpwError::RecordsPerHour { line, found } => format!(
            "La línea {line} de este archivo dice {} filas por hora, que no dividen una hora en partes iguales. Elija otro archivo.",
            number(*found)
        ),
        EpwError::LineTooLong { line, .. } => format!(
            "La línea {line} es más larga que cualquiera de un archivo EPW. Elija un archivo cuyo nombre termine en .epw."
        ),
        EpwError::TooManyRows { .. } => {
            "Este archivo tiene más filas que minutos tiene un año. Elija uno de un solo año.".to_owned()
        }
        EpwError::TooFewHours { found, needed } => format!(
            "Este archivo contiene {found} horas con temperatura, y hacen falta al menos {needed}. Elija uno entero."
        ),
    }
}

fn number(value: f64) -> String {
    signed(&value.to_string())
}

fn name(column: Column) -> &'static str {
    match column {
        Column::Latitude => "latitud",
        Column::Longitude => "longitud",
        Column::TimeZone => "huso horario",
        Column::Elevation => "altitud",
        Column::RecordsPerHour => "filas por hora",
        Column::DryBulb => "temperatura exterior",
        Column::RelativeHumidity => "humedad",
        Column::Pressure => "presión del aire",
        Column::WindSpeed => "velocidad del viento",
    }
}
