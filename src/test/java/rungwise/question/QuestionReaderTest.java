package rungwise.question;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwise.Base;
import rungwise.knowledge.load.Mappers;

class QuestionReaderTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"extent": [1]}                | /extent: a list stands here; write an object with fields out of spots, diameterMm, areaM2
            {"extent": {"spots": 1.5}}     | /extent/spots: the number 1.5 stands here; write a whole number
            {"facts": {"clearMicrons": "thin"}} | /facts/clearMicrons: the text "thin" stands here; write a number
            {"facts": {"refinished": "maybe"}}  | /facts/refinished: the text "maybe" stands here; write true or false
            {"setting": {"airC": {}}}      | /setting/airC: an object stands here; write a number
            {"facts": {"clearMicrons": " "}} | /facts/clearMicrons: it says nothing
            {"setting": {"airC": ""}}      | /setting/airC: it says nothing
            {"shelf": "clay_fine"}         | /shelf: the text "clay_fine" stands here; write a list
            {"tried": ["clay_fine"]}       | /tried/0: the text "clay_fine" stands here; write an object with fields out of method,
            {"contaminant": ["tar_spot"]}  | /contaminant: a list stands here; write text
            {"setting": {"windMS": 4}}     | /setting/windMS: "windMS" is not a field here; did you mean windMs? The fields are airC,
            {"weather": 4}                 | /weather: "weather" is not a field here; the fields are contaminant,
            """)
    void what_stands_in_the_wrong_place_is_named_with_what_belongs_there(String question, String said) {
        assertThatThrownBy(() -> QuestionReader.read(Mappers.json().readTree(question), Base.advisor().knowledge()))
                .isInstanceOf(BadQuestion.class).hasMessageContaining(said);
    }
}
